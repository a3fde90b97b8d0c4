// Small plans in which something is not known, judged, and all that is said of them.

import { textReport } from '../../src/cli/report'
import { type Draft, settle } from '../../src/plan'
import { shortfallOf } from '../../src/reckon'
import { formatsIn, missingOf, setupInWords, shortfallInWords } from '../../src/report'
import { askedBy, helpFor, requirementRows } from '../../src/report/compare-packs'
import { explain } from '../../src/report/why'
import { reckoned } from './small-plans'
import { contextOf } from './why-context'

export const metric = formatsIn('metric')

export const draftOf = (
  gear: object[],
  pack: object = { bodyLitres: 20 },
  setup: object = { ratedKg: 12 },
): Draft =>
  ({
    carrier: { massKg: 70 },
    trip: {
      stops: [
        { id: 's', name: 'Start' },
        { id: 'e', name: 'End', leg: { km: 5 } },
      ],
      water: { litresPerHour: 0, campLitres: 0, reserveLitres: 0 },
    },
    gear,
    packs: [{ id: 'p', name: 'Pack', ...pack, setups: [{ id: 'u', massKg: 1, frame: 'framed', ...setup }] }],
  }) as unknown as Draft

export const kit = { id: 'kit', name: 'Kit', massKg: 4, litres: 14 }
export const tent = { id: 'tent', name: 'Tent', massKg: 1.5 }
export const mat = { id: 'mat', name: 'Mat', massKg: 0.5 }

export function judged(draft: Draft) {
  const { plan } = settle(draft)
  const reckoning = reckoned(plan)
  const missing = missingOf(plan)
  return {
    missing,
    plan,
    reckoning,
    words: setupInWords(reckoning.packs[0]!, { plan, reckoning, formats: metric }),
  }
}
export const plain = (text: string) => text.replace(/[\u00a0\u202f]/g, ' ').replace(/\s+/g, ' ')
/** All that the reasons, the help, the requirement and the command line say. */
export function allWords({ plan, reckoning }: ReturnType<typeof judged>) {
  const context = contextOf(plan, reckoning)
  const help = helpFor(plan, reckoning, { setupIndex: 0, formats: metric })
  const remedies = help.remedies.map(({ remedy }) => remedy)
  const shortfall = shortfallOf(plan, reckoning, 0)
  const why = [
    ...explain({ kind: 'body-litres' }, context),
    ...explain({ kind: 'peak-load' }, context),
    ...explain({ kind: 'set-up', setup: 0 }, context),
    ...explain({ kind: 'remedies', setup: 0, remedies }, context),
    ...explain({ kind: 'remedies', setup: 0, remedies: [] }, context),
    ...explain({ kind: 'asked', trips: [{ name: '', plan }], packKg: 1 }, context),
  ]
  return {
    remedies,
    help: plain(help.remedies.map(({ text }) => text).join(' ')),
    look: plain(shortfall ? shortfallInWords(shortfall, { plan, reckoning, formats: metric }) : ''),
    why: plain(JSON.stringify(why)),
    rows: plain(JSON.stringify(requirementRows(askedBy([{ plan, reckoning }])!, metric))),
    report: plain(textReport(plan, reckoning)),
  }
}
export const textOf = ({ words }: ReturnType<typeof judged>) =>
  words.verdicts.map(({ lead, rest }) => lead + rest).join(' ')
