// How many packs there are of each answer, of one's own and starred: each count shows those alone.

import { ANSWERS } from '../../report'
import type { PackList } from './pack-list'
import { look, type PackAnswer } from './view'

const ANSWER_NAMES = Object.keys(ANSWERS) as PackAnswer[]

export function Counts({ list: { counts, chosen }, isApart }: { list: PackList; isApart: boolean }) {
  const { answer: asked, has, starred } = chosen
  const isMine = has === 'owned'
  const answers = isApart ? [] : ANSWER_NAMES
  return (
    <fieldset class="counts cluster" aria-label="Show only">
      {answers.map(answer => (
        <Count
          key={answer}
          mark={ANSWERS[answer].mark}
          count={counts.answers.get(answer) ?? 0}
          words={ANSWERS[answer].shortMany}
          isOn={answer === asked}
          onTap={on => look({ answer: on ? answer : null })}
        />
      ))}
      <Count
        count={counts.mine}
        words="mine"
        isOn={isMine}
        onTap={on => look({ has: on ? 'owned' : null })}
      />
      <Count
        mark="★"
        count={counts.starred}
        words="starred"
        isOn={starred}
        onTap={on => look({ starred: on })}
      />
    </fieldset>
  )
}

interface CountProps {
  mark?: string
  count: number
  words: string
  isOn: boolean
  onTap: (on: boolean) => void
}

/** Left out where there are none, unless it is on. */
function Count({ mark, count, words, isOn, onTap }: CountProps) {
  if (count === 0 && !isOn) return null
  return (
    <button type="button" class="quiet" aria-pressed={isOn} onClick={() => onTap(!isOn)}>
      {mark ? <span aria-hidden="true">{mark} </span> : null}
      {count} {words}
    </button>
  )
}
