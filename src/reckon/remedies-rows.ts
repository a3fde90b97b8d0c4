// What a set-up asks of a choice of things, as rows of "what is taken away must add up to what is too much": the two
// terms of the packing model, the load and the pockets at every moment, and each thing that is too long or too wide.

import type { Item } from '../plan/types'
import { tooLargeIn } from './box-fit'
import { unitsInPlay } from './ledger'
import { type Parts, rigidInBody } from './need'
import { type Candidate, judgedIn } from './remedies-candidate'
import type { Line } from './remedies-line'
import { emptiedBy, type MovableItem } from './remedies-movable'
import { overflowingBy } from './remedies-parts'
import type { Row } from './remedies-solve'
import { packingTerms } from './room'
import type { Moment } from './types'
import { contentsLimitKg } from './verdicts'

/** Litres and kilograms: less than this is no shortfall, and mended but for this is mended. */
const ROUNDING = 1e-9
/** Above so many rows, comparing them with each other costs more than it saves. */
const MOST_COMPARED = 200

/**
 * The rows for a choice of so many things, whose main-body litres must keep under the line. Rows that no choice needs to
 * mend are left out.
 */
export function rowsOf(
  candidate: Candidate,
  parts: Parts,
  things: MovableItem[],
  line: Line,
): (size: number) => Row[] {
  const { moments } = candidate.reckoning
  const pack = candidate.plan.packs[0]!
  const judged = judgedIn(candidate)
  const others = withoutRepeats([...loadRows(), ...pocketRows(), ...sizeRows()])
  const body = withoutRepeats(bodyRows())
  return size => {
    const less = line.besides(0) - line.besides(size)
    const wanting = body.filter(({ need }) => need > less)
    return [...wanting.map(({ need, gives }) => ({ need: need - less, gives })), ...others]
  }

  function loadRows(): Row[] {
    const limitKg = contentsLimitKg(judged, candidate.reckoning.need)
    if (limitKg === null) return []
    return moments.flatMap((moment, m) => {
      const need = moment.kg.total + moment.wantedLitres - limitKg
      if (need <= ROUNDING) return []
      return [row(need, it => (it.way === 'leave' ? it.item.massKg * pieces(it.item, m) : 0))]
    })
  }

  function pocketRows(): Row[] {
    const { outsideLitres } = pack
    if (outsideLitres === null) return []
    return moments.map((moment, m) =>
      // Pockets that are too full may stay so, and what they cannot take rides inside; nothing is added to them.
      row(Math.min(0, moment.outsideLitres - outsideLitres), ({ item, way }) => {
        const litres = item.litres * pieces(item, m)
        if (way === 'move') return -litres
        return item.inside === null && item.stow === 'outside-pocket' ? litres : 0
      }),
    )
  }

  function sizeRows(): Row[] {
    return rigidInBody(parts)
      .filter(item => tooLargeIn(pack, item).length > 0)
      .map(item =>
        row(1, it => (it.item.id === item.id || (it.way === 'move' && it.item.id === item.inside) ? 1 : 0)),
      )
  }

  function bodyRows(): Row[] {
    const { perLitre, forThing, besides, capacityLitres } = line
    const emptied = emptiedBy(things).emptied
    const beside = [...forThing.values()].reduce((sum, more) => sum + more, besides(0))
    const terms = Object.values(packingTerms(parts.packing))
    return moments.flatMap((moment, m) =>
      heaps(moment, m, emptied).flatMap(({ softLitres, overflowing }) =>
        terms.flatMap(term => {
          const litres = moment.rigidLitres * term.perRigidLitre + softLitres * term.perSoftLitre
          const need = litres * perLitre + beside - capacityLitres
          if (need <= ROUNDING) return []
          return [
            row(need, ({ item }) => {
              const taken = item.litres * pieces(item, m) * slope(item, term, overflowing)
              return taken * perLitre + (forThing.get(item.id) ?? 0)
            }),
          ]
        }),
      ),
    )
  }

  function slope(item: Item, term: { perRigidLitre: number; perSoftLitre: number }, overflowing: string[]) {
    if (item.inside !== null) return overflowing.includes(item.inside) ? term.perSoftLitre : 0
    if (item.stow !== 'main-body') return 0
    return item.build === 'rigid' ? term.perRigidLitre : term.perSoftLitre
  }

  /** The soft litres at a moment for each set of containers taken as overflowing; the true one is the largest. */
  function heaps(moment: Moment, m: number, emptied: string[]) {
    const over = (id: string) => overflowingBy(parts, m, id)
    const dry = emptied.reduce((soft, id) => soft - Math.max(0, over(id)), moment.softLitres)
    return Array.from({ length: 1 << emptied.length }, (_, bits) => {
      const overflowing = emptied.filter((_, i) => bits & (1 << i))
      return { softLitres: overflowing.reduce((soft, id) => soft + over(id), dry), overflowing }
    })
  }

  function pieces(item: Item, m: number): number {
    return item.count * unitsInPlay(item, parts.stocks[m]!)
  }

  function row(need: number, gives: (it: MovableItem) => number): Row {
    return { need: need - ROUNDING, gives: things.map(gives) }
  }
}

/** Without rows that are mended whenever another is: same gives or fewer there, and as much needed or more. */
function withoutRepeats(rows: Row[]): Row[] {
  const byGives = new Map<string, Row>()
  for (const row of rows) {
    const key = row.gives.join()
    const same = byGives.get(key)
    if (!same || row.need > same.need) byGives.set(key, row)
  }
  const distinct = [...byGives.values()].filter(row => row.need > 0 || row.gives.some(give => give < 0))
  if (distinct.length > MOST_COMPARED) return distinct
  return distinct.filter((row, i) => !distinct.some((other, j) => i !== j && implies(other, row)))
}

const implies = (other: Row, row: Row) =>
  other.need >= row.need && other.gives.every((give, i) => give <= row.gives[i]!)
