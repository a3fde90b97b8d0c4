// Sharing out by trying every choice, read off the model page and not off the engine's search: each person is written as
// a plan of one hiker with what they carry, and that plan is reckoned in full.

import type { ItemDocument, PartyDocument, PlanDocument } from '../../src/plan'
import type { PersonDocument } from './party-plans'

/** What one hiker's plan comes to: peak load with all the water, and of its one set-up, if it has one, the rest. */
export interface Judged {
  peakKg: number
  setup: { carriedKg: number; suffices: boolean } | null
}

export type Judge = (document: PlanDocument) => Judged

export interface Choice {
  /** Ids of what each person carries. */
  carries: string[][]
  youngOver: number
  fails: number
  strains: number[]
  moved: number
}

/** The plan of one hiker: this person with these things. */
export function aloneWith(
  document: PartyDocument,
  person: PersonDocument,
  gear: ItemDocument[],
): PlanDocument {
  const { people, split: _, packings = [], packs = [], trip, ...rest } = document
  const { id, name: _name, waterShare = 1, pack, ...carrier } = person
  const { litresPerHour = 0.5, campLitres = 3, reserveLitres = 0.5 } = trip.water ?? {}
  if (litresPerHour === 'from-heat' && waterShare !== 1) throw new Error('no plan of one hiker says this')
  const water = {
    ...trip.water,
    litresPerHour: litresPerHour === 'from-heat' ? litresPerHour : litresPerHour * waterShare,
    campLitres: campLitres * waterShare,
    reserveLitres: reserveLitres * waterShare,
  }
  const theirs = pack && packs[pack.pack]!
  return {
    ...rest,
    carrier,
    trip: { ...trip, water },
    gear: gear.map(({ owner: _owner, carriedBy: _by, shareable: _may, ...item }) => item),
    packs: theirs ? [{ ...theirs, setups: [theirs.setups[pack.setup ?? 0]!] }] : [],
    packings: packings
      .filter(it => (it.person ?? people[0]!.id) === id)
      .map(({ person: _person, ...packing }) => packing),
  }
}

/** The best of all choices in the order of the page. */
export function bestOfAll(document: PartyDocument, judge: Judge): Choice {
  const { people, gear = [], split } = document
  const by = split?.by ?? 'limit'
  const loose = gear.filter(item => item.inside === undefined)
  const mayMove = (item: ItemDocument) =>
    item.carriedBy === undefined &&
    item.stow !== 'worn' &&
    !((item.holdsWaterLitres ?? 0) > 0) &&
    (item.owner === undefined || item.shareable === true)
  const pieces = loose.filter(mayMove)
  const known = new Map<string, Judged>()
  const judged = (person: PersonDocument, theirs: ItemDocument[]) => {
    const key = `${person.id}:${theirs.map(item => item.id).join(',')}`
    const before = known.get(key)
    if (before) return before
    const now = judge(aloneWith(document, person, theirs))
    known.set(key, now)
    return now
  }
  const count = people.length ** pieces.length
  const all: Choice[] = []
  for (let n = 0; n < count; n++) {
    // The first piece is the leading digit, so that choices come in the plan's order.
    const to = new Map<string, string>()
    pieces.forEach(({ id }, i) => {
      const digit = Math.floor(n / people.length ** (pieces.length - 1 - i)) % people.length
      to.set(id, people[digit]!.id)
    })
    const carrierOf = (item: ItemDocument): string => {
      const box = item.inside === undefined ? item : gear.find(({ id }) => id === item.inside)!
      return to.get(box.id) ?? box.carriedBy ?? box.owner!
    }
    const theirs = people.map(({ id }) => gear.filter(item => carrierOf(item) === id))
    const found = people.map((person, p) => judged(person, theirs[p]!))
    const carriedKg = found.map(it => it.setup?.carriedKg ?? it.peakKg)
    const ofLimit = people.map(({ massKg, ageYears = 30, loadShareLimit }, p) => {
      const limit = loadShareLimit ?? (ageYears < 18 ? 0.15 : 0.2)
      return carriedKg[p]! / (limit * massKg)
    })
    all.push({
      carries: theirs.map(items => items.map(({ id }) => id)),
      youngOver: people.filter(({ ageYears = 30 }, p) => ageYears < 18 && ofLimit[p]! > 1 + 1e-9).length,
      fails: found.filter(it => it.setup && !it.setup.suffices).length,
      strains: by === 'mass' ? carriedKg : ofLimit,
      moved: loose.filter(item => item.owner !== undefined && carrierOf(item) !== item.owner).length,
    })
  }
  const spared = people.findIndex(({ id }) => id === by)
  const aims: ((choice: Choice) => number)[] = [
    it => it.youngOver,
    it => it.fails,
    ...(spared < 0 ? [] : [(it: Choice) => it.strains[spared]!]),
    it => Math.max(...it.strains),
    it => it.moved,
  ]
  const best = aims.reduce((left, aim) => {
    const least = Math.min(...left.map(aim))
    return left.filter(choice => aim(choice) <= least + 1e-9)
  }, all)
  return best[0]!
}
