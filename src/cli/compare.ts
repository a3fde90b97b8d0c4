// Two plans side by side, as text or as data.

import type { Plan } from '../plan'
import type { Answer, Reckoning } from '../reckon'
import { ANSWERS, comparePlansOf, type PlanComparison, signedText } from '../report'
import type { System } from '../units'
import { aligned } from './columns'

interface Compared {
  listed: Plan
  reckoning: Reckoning
}

export function comparePlans(
  one: Compared,
  other: Compared,
  { system, json }: { system: System; json: boolean },
): string {
  const [before, after] = [one, other].map(({ listed: plan, reckoning }) => ({ plan, reckoning })) as [
    { plan: Plan; reckoning: Reckoning },
    { plan: Plan; reckoning: Reckoning },
  ]
  const found = comparePlansOf(before, after, system)
  return json ? `${JSON.stringify(found, null, 1)}\n` : textOf(found, before.plan, after.plan)
}

function textOf(found: PlanComparison, before: Plan, after: Plan): string {
  const [here, there] = [before.name || 'First plan', after.name || 'Second plan']
  const sections = [
    [`${here} → ${there}`],
    ...(found.onlyBefore.length ? [[`ONLY IN ${here}`, ...found.onlyBefore]] : []),
    ...(found.onlyAfter.length ? [[`ONLY IN ${there}`, ...found.onlyAfter]] : []),
    ...(found.changed.length
      ? [
          [
            'CHANGED',
            ...found.changed.map(
              ({ name, fields }) =>
                `${name}: ${fields.map(({ what, before, after }) => (before === null || after === null ? what : `${what} ${before} → ${after}`)).join('; ')}`,
            ),
          ],
        ]
      : []),
    [
      'THE NEED',
      ...found.unknown.before.map(each => `${here}: ${each}.`),
      ...found.unknown.after.map(each => `${there}: ${each}.`),
      ...aligned(
        found.figures.map(({ what, before, after, change, show }) => [
          what,
          show(before),
          show(after),
          signedText(change, show) ?? 'the same',
        ]),
      ),
    ],
    ...(found.answers.length
      ? [
          [
            'PACKS',
            ...aligned(
              found.answers.map(({ name, before, after }) => [name, answerText(before), answerText(after)]),
            ),
          ],
        ]
      : []),
  ]
  return `${sections.map(lines => lines.join('\n')).join('\n\n')}\n`
}

const answerText = (answer: Answer | null) =>
  answer === null ? '– not in it' : `${ANSWERS[answer].mark} ${ANSWERS[answer].words}`
