// What brings the cautions of a trip about: changes of the help's trip, each of which arouses some, so that their short
// lines can be shown as they are told.

import type { ItemDocument, PlanDocument } from '../../plan'
import type { Caution } from '../caution'
import { cautionsOf } from '../cautions'
import type { Formats } from '../formats'
import { type Change, exampleOf } from './example'

/** One of each with its short line as its text; the gravest first. */
export function cautionExamples(formats: Formats): Caution[] {
  const found = new Map<string, Caution>()
  for (const change of CASES) {
    const { plan, reckoning } = exampleOf(change)
    for (const caution of cautionsOf(plan, reckoning, formats)) {
      const shape = shapeOf(caution)
      if (shape !== null && !found.has(shape)) found.set(shape, caution)
    }
  }
  const all = [...found.values()].map(
    ({ signal, about, short, text }): Caution => ({ signal, about, text: short ?? text }),
  )
  return SIGNALS.flatMap(signal => all.filter(caution => caution.signal === signal))
}

/** The gravest first. */
export const SIGNALS: readonly Caution['signal'][] = ['WARNING', 'CAUTION', 'NOTICE']

/** What is the same but for its figures is told once; null for what holds on every trip. */
const shapeOf = ({ signal, short }: Caution): string | null =>
  short === undefined ? null : `${signal} ${short.replace('up to ', '').replace(/\d[\d.,]*/g, '#')}`

const carrier =
  (more: Partial<PlanDocument['carrier']>): Change =>
  document => ({ ...document, carrier: { ...document.carrier, ...more } })

const trip =
  (more: Partial<PlanDocument['trip']>): Change =>
  document => ({ ...document, trip: { ...document.trip, ...more } })

const gear =
  (of: (gear: ItemDocument[]) => ItemDocument[]): Change =>
  document => ({ ...document, gear: of(document.gear ?? []) })

const stops =
  (of: (stop: PlanDocument['trip']['stops'][number]) => PlanDocument['trip']['stops'][number]): Change =>
  document => ({ ...document, trip: { ...document.trip, stops: document.trip.stops.map(of) } })

const fuel = (kind: 'methanol' | 'gas', meltLitres: number): ItemDocument => ({
  ...{ id: 'fuel', name: 'Stove fuel', massKg: null, litres: 0.2, use: 'nightly' },
  fuel: { kind, boilLitres: 1, meltLitres },
})

const fromHeat = (weather: NonNullable<PlanDocument['trip']['weather']>): Change =>
  trip({ weather, water: { litresPerHour: 'from-heat' } })

const WATER_ITEMS = (item: ItemDocument) => (item.holdsWaterLitres ?? 0) > 0

const CASES: readonly Change[] = [
  trip({ water: { campLitres: 5 } }),
  all(
    trip({ water: { trustDoubtful: true } }),
    stops(stop => (stop.name === 'Tarn' ? { ...stop, water: 'doubtful' } : stop)),
  ),
  trip({ water: { litresPerHour: 2 } }),
  trip({ weather: { airC: 30 } }),
  fromHeat({ airC: 40 }),
  fromHeat({ airC: 50, humidity: 1, sun: true }),
  fromHeat({}),
  carrier({ massKg: 60 }),
  carrier({ loadShareLimit: 0.15 }),
  carrier({ ageYears: 12 }),
  document => ({ ...document, carrier: { massKg: document.carrier.massKg, ageYears: 16 } }),
  trip({ meals: { ration: 'energy', deficit: 0.3 } }),
  stops(stop => (stop.leg ? { ...stop, leg: { ...stop.leg, hours: 1 } } : stop)),
  all(
    fromHeat({ airC: 45, sun: true }),
    stops(stop => (stop.leg ? { ...stop, leg: { ...stop.leg, hours: 9 } } : stop)),
  ),
  gear(items => items.filter(({ use }) => use !== 'daily')),
  gear(items => items.filter(item => !WATER_ITEMS(item))),
  gear(items => [...items, fuel('methanol', 0)]),
  gear(items => [...items, fuel('gas', 2)]),
  gear(items => items.map(item => (item.id === 'clothes' ? { ...item, massKg: 0.01, litres: 40 } : item))),
  document => ({
    ...document,
    packs: (document.packs ?? []).map(pack => ({
      ...pack,
      setups: pack.setups.map(setup => ({ ...setup, frame: 'frameless' as const })),
    })),
  }),
]

/** One change after another. */
function all(...changes: readonly Change[]): Change {
  return document => changes.reduce((before, next) => next(before), document)
}
