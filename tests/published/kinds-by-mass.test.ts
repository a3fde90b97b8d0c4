// What is soft takes room by its mass: litres per kilogram by origin, held to what each says it is derived from, and
// the words that people write for a kind.

import { describe, expect, it } from 'vitest'
import kindTable from '../../data/item-kinds.json'
import { fillDensityGPerLitre } from '../../src/equations'
import {
  highEndOf,
  type Kind,
  kindNamed,
  kindOf,
  kinds,
  litresOfKind,
  originText,
  typicalLitresOf,
} from '../../src/plan/kinds'

const soft = kinds.filter(({ litresPerKg }) => litresPerKg)
const wide = ({ low, high }: { low: number; high: number }) => high - low
const noteOf = (kind: Kind) => (kind as Kind & { note?: string }).note ?? ''
/** To the three digits of the table. */
const near = (kind: Kind, ends: [number, number, number]) => {
  const { low, typical, high } = kind.litresPerKg!
  ends.forEach((end, i) => {
    expect(Math.abs([low, typical, high][i]! / end - 1), `${kind.kind} ${i}`).toBeLessThan(0.006)
  })
}

describe('litres per kilogram', () => {
  it('are stated for what is mostly soft and for nothing that has a shape, each with its standing', () => {
    for (const { kind, litresPerKg, softShare } of kinds)
      expect(litresPerKg !== undefined, kind).toBe(softShare >= 0.5)
    for (const kind of soft) {
      const { low, typical, high, from } = kind.litresPerKg!
      expect(0 < low && low < typical && typical < high, kind.kind).toBe(true)
      expect(kindTable.litresPerKgFrom).toHaveProperty(from)
      expect(originText(kind, true)).toMatch(/^typical for its mass, .*not measured$/)
    }
    for (const { standing } of Object.values(kindTable.litresPerKgFrom))
      expect(standing).toMatch(/derived|from memory|our judgement|the row/)
  })

  it('of down and polyester are the fill at 3 kPa and the shell, the law being known to a factor of 2 (derived)', () => {
    const filled = soft.filter(({ litresPerKg }) => litresPerKg!.from === 'fill-and-shell')
    expect(filled).toHaveLength(8)
    for (const kind of filled) {
      const sum = /(\d+) g fill at (\d+) g\/L.*? \+ (\d+) g shell at (\d+) g\/L/.exec(noteOf(kind))!
      const [fill = 0, rounded = 0, shell = 0, shellPerLitre = 0] = sum.slice(1).map(Number)
      const fibre = kind.kind.includes('down') ? 'down' : 'synthetic'
      const law = fillDensityGPerLitre({ fill: fibre, pressurePa: 3000 })
      if (!law.ok) throw new Error('outside the law')
      expect(Math.abs(law.value - rounded)).toBeLessThan(0.6)
      const at = (times: number) =>
        (1000 * (fill / (law.value * times) + shell / shellPerLitre)) / (fill + shell)
      const factor = 2 ** (1 / 3)
      near(kind, [at(factor), at(1), at(1 / factor)])
    }
  })

  it.each([
    ['coated-fabric', 200, 270],
    ['fleece', 110, 150],
    ['rolled-fabric', 200, 300],
    ['dry-food', 350, 500],
  ])('of %s have their ends at %d and %d g/L (from memory, food derived)', (from, least, most) => {
    const those = soft.filter(({ litresPerKg }) => litresPerKg!.from === from)
    expect(those.length).toBeGreaterThan(0)
    for (const kind of those)
      near(kind, [1000 / most, (kind.litres.typical / kind.massG) * 1000, 1000 / least])
  })

  it('of a tent with its poles are those of its parts (derived)', () => {
    const tents = soft.filter(({ litresPerKg }) => litresPerKg!.from === 'sum')
    expect(tents).toHaveLength(2)
    for (const kind of tents) {
      const parts = noteOf(kind)
        .split(' + ')
        .map(name => kindNamed(name)!)
      const sum = (of: (part: Kind) => number) => parts.reduce((total, part) => total + of(part), 0)
      expect(kind.massG).toBe(sum(part => part.massG))
      for (const end of ['low', 'typical', 'high'] as const)
        expect(kind.litres[end]).toBeCloseTo(
          sum(part => part.litres[end]),
          1,
        )
      const ends = (['low', 'typical', 'high'] as const).map(end =>
        sum(({ litres, litresPerKg, massG }) =>
          litresPerKg ? (litresPerKg[end] * massG) / 1000 : litres[end],
        ),
      )
      near(kind, ends.map(litres => (1000 * litres) / kind.massG) as [number, number, number])
    }
  })

  it('by our judgement lie at 1.3 times and 1/1.3 of the row’s own', () => {
    const judged = soft.filter(({ litresPerKg }) => litresPerKg!.from === 'judgement')
    expect(judged.length).toBeGreaterThan(10)
    for (const kind of judged) {
      const own = (kind.litres.typical / kind.massG) * 1000
      near(kind, [own / 1.3, own, own * 1.3])
    }
  })
})

describe('the litres of a kind', () => {
  const quilt = kindNamed('down quilt, summer')!

  it('are those of its mass: a quilt of 740 g takes more than one of 500 g, each within less than the kind did', () => {
    const [light, heavy] = [0.5, 0.74].map(massKg => litresOfKind(quilt, { massKg }))
    expect(light).toEqual({ low: 7.82 * 0.5, typical: 9.46 * 0.5, high: 11.5 * 0.5 })
    expect(heavy!.low).toBeGreaterThan(light!.low)
    expect(heavy!.typical).toBeGreaterThan(light!.high)
    for (const range of [light!, heavy!]) expect(wide(range)).toBeLessThan(wide(quilt.litres))
  })

  it('are narrower by its typical mass than without one, and at no usual mass wider by a hundredth', () => {
    // At its one mass a row of food has nothing to gain; how tightly a rope is coiled is not told by its mass.
    const apart = ['dense snack food, 500 g', 'rope 8 mm, 30 m']
    for (const kind of soft) {
      if (apart.includes(kind.kind)) continue
      const at = (g: number) => wide(litresOfKind(kind, { massKg: g / 1000 })) / wide(kind.litres)
      expect(at(kind.massG), kind.kind).toBeLessThan(1)
      expect(at(kind.massHighG), kind.kind).toBeLessThan(1.01)
    }
  })

  it('stay those of the kind where the mass is open or a guess, and where it has a shape', () => {
    expect(litresOfKind(quilt, {})).toEqual(quilt.litres)
    expect(litresOfKind(quilt, { massKg: 0.74, massFrom: 'guess' })).toEqual(quilt.litres)
    const pot = kindNamed('solo pot with lid, 0.8 L inner')!
    expect(litresOfKind(pot, { massKg: 0.2 })).toEqual(pot.litres)
  })

  it('of a hard bottle or box are as much larger as what it holds', () => {
    const bottle = kindNamed('rigid water bottle, 1 L, empty')!
    expect(litresOfKind(bottle, { massKg: 0.1, holdsWaterLitres: 0.5 }).typical).toBeCloseTo(0.575, 9)
    const box = kindNamed('bear-resistant container, empty')!
    expect(litresOfKind(box, { holdsLitres: 4.85 }).typical).toBeCloseTo(5.7, 9)
  })
})

describe('plain words', () => {
  it.each([
    ['Tent', 1.4, 'tent with poles, one person'],
    ['Tent', 2, 'tent with poles, two person'],
    ['Puffy', 0.32, 'down jacket, light'],
    ['Puffy', 0.45, 'synthetic insulated jacket'],
    ['Down jacket', 0.3, 'down jacket, light'],
    ['Stove', 0.09, 'canister stove top'],
    ['Shirt', 0.18, 'base-layer top'],
    ['T-shirt', 0.15, 'base-layer top'],
    ['Trousers', 0.34, 'hiking trousers'],
    ['Pants', 0.34, 'hiking trousers'],
    ['Quilt', 0.5, 'down quilt, summer'],
    ['Quilt', 0.7, 'down quilt, 3-season'],
    ['Quilt', 0.76, 'synthetic quilt, summer'],
    ['Synthetic quilt', 0.74, 'synthetic quilt, summer'],
    ['Pillow', 0.08, 'inflatable pillow'],
    ['Tarp', 0.35, 'flat tarp with lines'],
    ['Hammock', 0.7, 'hammock with suspension'],
    ['Bivy', 0.4, 'bivy sack'],
    ['Base layer', 0.18, 'base-layer top'],
    ['Hat', 0.06, 'hat and gloves'],
    ['Gloves', 0.06, 'hat and gloves'],
    ['Underwear', 0.08, 'underwear set'],
    ['Pot', 0.13, 'solo pot with lid, 0.8 L inner'],
    ['Pot', 0.3, 'group pot with lid, 2 L inner'],
    ['Lighter', 0.02, 'lighter'],
    ['Knife', 0.08, 'pocket knife'],
    ['Bottle', 0.1, 'rigid water bottle, 1 L, empty'],
    ['Water bottle', 0.1, 'rigid water bottle, 1 L, empty'],
    ['Soft bottle', 0.04, 'soft water bottle 1 L, empty'],
    ['Reservoir', 0.16, 'hydration reservoir, 2 L, empty'],
    ['Bladder', 0.16, 'hydration reservoir, 2 L, empty'],
    ['Filter', 0.09, 'water filter, squeeze type'],
    ['Lamp', 0.09, 'headlamp'],
    ['Poles', 0.45, 'trekking poles, folded pair'],
    ['Charger', 0.1, 'cables and charger'],
    ['Snacks', 0.3, 'dense snack food, 500 g'],
    ['Hard food box', 1, 'bear-resistant container, empty'],
    ['Neck tube', 0.06, 'hat and gloves'],
    ['Boot spikes', 0.8, 'crampons, pair in bag'],
  ])('"%s" of %d kg is surely %s', (name, massKg, kind) => {
    expect(kindOf({ name, massKg })?.kind).toBe(kind)
  })
})

describe('the high end, where only a name is known', () => {
  it('is that of the kind, by its mass where that is known', () => {
    expect(highEndOf({ name: 'Rain jacket' })).toEqual({ litres: 2.1, massKg: 0.45 })
    expect(highEndOf({ name: 'Rain jacket', massKg: 0.2 })).toEqual({ litres: 1, massKg: 0.45 })
  })

  it('is that of the largest where the name may mean several', () => {
    expect(highEndOf({ name: 'Sleeping bag' })).toEqual({ litres: 20, massKg: 2 })
    expect(kindOf({ name: 'Sleeping bag' })).toBeNull()
    expect(typicalLitresOf({ name: 'Sleeping bag' })).toBeNull()
  })

  it('is none where the name means nothing that is known', () => {
    expect(highEndOf({ name: 'Harmonium' })).toBeNull()
    expect(highEndOf({})).toBeNull()
  })

  it('goes with typical litres, to be offered where there is one kind', () => {
    expect(typicalLitresOf({ name: 'Down quilt', massKg: 0.74 })).toBeCloseTo(10.4 * 0.74, 9)
  })
})
