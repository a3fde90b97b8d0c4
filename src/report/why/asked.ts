// Why a pack must offer so much for one trip, or for the most demanding of several. Source keys: gum-2008,
// frameless-ceiling.

import { type Reckoning, reckon, requirementOf } from '../../reckon'
import { capital } from '../../units'
import { ENOUGH_UNTOLD } from '../compare-packs'
import type { Formats } from '../formats'
import { limitWithoutFrame } from '../limit-names'
import { leastText, type Missing, missingOf } from '../missing'
import { settingInput } from './origins'
import { sumOf, told } from './sum'
import type { Explanation, NamedPlan, WhyInput } from './types'

interface Asking {
  name: string
  plan: NamedPlan['plan']
  reckoning: Reckoning
  packKg: number
}

/** `packKg` null: a pack as heavy as each plan takes it for energy. Trips that do not settle are left out. */
export function whyAsked(
  trips: readonly NamedPlan[],
  { packKg, formats }: { packKg: number | null; formats: Formats },
): Explanation[] {
  const asking = trips.flatMap(({ name, plan }): Asking[] => {
    const result = reckon(plan)
    if (!result.ok) return []
    return [{ name, plan, reckoning: result.reckoning, packKg: packKg ?? plan.settings.packKgForEnergy }]
  })
  if (asking.length === 0) return []
  const needOf = ({ reckoning }: Asking) => reckoning.need
  return [
    room(asking, formats),
    load(asking, formats),
    ...most(asking, {
      title: 'Pockets',
      of: it => needOf(it).outsideLitres || null,
      show: formats.litres,
      whole: formats.litresUp,
    }),
    ...most(asking, { title: 'Height inside', of: it => needOf(it).longestCm, show: formats.cm }),
    ...most(asking, { title: 'Width inside', of: it => needOf(it).widestCm, show: formats.cm }),
  ]
}

/** The trip for which `of` is largest. */
const leading = (asking: Asking[], of: (it: Asking) => number) =>
  asking.reduce((a, b) => (of(b) > of(a) ? b : a))

/** Each trip's own figure, where there are several. */
const each = (asking: Asking[], show: (it: Asking) => string): WhyInput[] =>
  asking.length > 1 ? asking.map(it => ({ label: it.name, value: show(it) })) : []

/** What is missing in any of the trips. */
const missingIn = (asking: Asking[]): Missing => {
  const each = asking.map(({ plan }) => missingOf(plan))
  return {
    litres: each.flatMap(({ litres }) => litres),
    mass: each.flatMap(({ mass }) => mass),
    gear: each.some(({ gear }) => gear),
  }
}

function room(asking: Asking[], formats: Formats): Explanation {
  const missing = missingIn(asking)
  if (missing.litres.length > 0) return leastRoom(asking, missing, formats)
  const { need } = leading(asking, it => it.reckoning.need.bodyLitresSafe).reckoning
  const likely = Math.max(...asking.map(it => it.reckoning.need.bodyLitres))
  return sumOf({
    title: 'Main body',
    says: `What the trip asks for at its fullest. For what is unsure, 1.28 standard deviations: enough in about 9 of 10 cases. Whole litres, rounded up: ${formats.litresUp(need.bodyLitresSafe)}, and ${formats.litresUp(likely)} likely.`,
    kind: 'volume',
    system: formats.system,
    show: formats.litres,
    parts: [
      { label: 'asked for', value: need.bodyLitres },
      { label: 'for what is unsure', value: need.bodyLitresSafe - need.bodyLitres },
    ],
    inputs: each(asking, it => formats.litres(it.reckoning.need.bodyLitresSafe)),
    sourceKeys: ['gum-2008'],
  })
}

/** Of things without litres nobody can say how much is enough: what is counted is the least. */
function leastRoom(asking: Asking[], missing: Missing, formats: Formats): Explanation {
  const litresOf = (it: Asking) => it.reckoning.need.bodyLitres
  const value = litresOf(leading(asking, litresOf))
  return told({
    title: 'Main body',
    says: `What the trip asks for at its fullest, rounded up to whole litres: at least ${formats.litresUp(value)}. ${capital(ENOUGH_UNTOLD)}`,
    inputs: each(asking, it => formats.litres(litresOf(it))),
    result: { value, text: leastText(missing, 'litres', formats.litres(value)) },
  })
}

function load(asking: Asking[], formats: Formats): Explanation {
  const contentsOf = (it: Asking) => requirementOf(it.plan, it.reckoning, it.packKg).contentsKg
  const it = leading(asking, contentsOf)
  const packKg = Math.max(...asking.map(asked => asked.packKg))
  const contentsKg = contentsOf(it)
  const { peakLoadFullWaterKg } = it.reckoning.need
  const missing = missingIn(asking)
  const context = { plan: it.plan, reckoning: it.reckoning, formats, stopIds: [] }
  return sumOf({
    title: 'Rated load',
    says: `The heaviest load with a liner where rain is likely, ${formats.kg(contentsKg)}, and the pack itself, ${formats.gear(packKg)}. Over ${limitWithoutFrame(it.plan)} it takes a frame.`,
    kind: 'mass',
    system: formats.system,
    show: formats.kg,
    text: leastText(missing, 'mass', formats.kg(contentsKg + it.packKg)),
    parts: [
      { label: 'contents', value: peakLoadFullWaterKg },
      {
        label: `a liner, ${formats.gear(contentsKg - peakLoadFullWaterKg)}`,
        value: contentsKg - peakLoadFullWaterKg,
        path: 'settings/linerKg',
      },
      { label: `the pack, ${formats.gear(packKg)}`, value: packKg },
    ],
    inputs: [
      settingInput(context, 'framelessCeilingKg', formats.kg),
      ...each(asking, asked => formats.kg(contentsOf(asked))),
    ],
    sourceKeys: ['frameless-ceiling'],
  })
}

interface Most {
  title: string
  of: (it: Asking) => number | null
  show: (value: number) => string
  /** As it is told where whole litres are. */
  whole?: (value: number) => string
}

function most(asking: Asking[], { title, of, show, whole }: Most): Explanation[] {
  const value = Math.max(...asking.map(it => of(it) ?? 0))
  if (value === 0) return []
  return [
    told({
      title,
      says: `The most that is asked for${whole ? `, in whole litres ${whole(value)}` : ''}; what it comes from stands under Need.`,
      inputs: each(asking, it => (of(it) === null ? 'nothing' : show(of(it) ?? 0))),
      result: { value, text: show(value) },
    }),
  ]
}
