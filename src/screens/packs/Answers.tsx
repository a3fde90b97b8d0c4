// How many packs do, may and do not: each count shows those alone.

import { ANSWERS } from '../../report'
import { type PackAnswer, view } from './view'

const WORDS: Record<PackAnswer, string> = {
  does: 'do',
  'with-care': 'with care',
  'cannot-tell': 'can’t tell',
  'does-not': 'do not',
}

export function AnswerCounts({ answers }: { answers: readonly (PackAnswer | null)[] }) {
  const chosen = view.value.answer
  const counts = (Object.keys(WORDS) as PackAnswer[]).map(answer => ({
    answer,
    count: answers.filter(each => each === answer).length,
  }))
  return (
    <fieldset class="answer-counts" aria-label="Show only">
      {counts
        .filter(({ answer, count }) => count > 0 || answer === chosen)
        .map(({ answer, count }) => (
          <button
            key={answer}
            type="button"
            class="quiet"
            aria-pressed={answer === chosen}
            onClick={() => {
              view.value = { ...view.value, answer: answer === chosen ? null : answer }
            }}
          >
            <span aria-hidden="true">{ANSWERS[answer].mark} </span>
            {count} {WORDS[answer]}
          </button>
        ))}
    </fieldset>
  )
}
