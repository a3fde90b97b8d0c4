// A good choice to begin with: pieces handed out greedily, then moved and exchanged, then all that two sides have shared
// out anew between them, as long as the worst side gains.

import { type Sharing, type Side, Sums } from './problem'

/** Over a limit by however little is worse than any strain, by more it is worse still. */
const OVER = { atAll: 1e4, byLimit: 1e6 }
/** A gain must be more than rounding. */
const GAIN = 1e-12
/** With more pieces only moves are tried and no exchanges. */
const MOST_EXCHANGED = 400
const MOST_EVENED = 80
/** Moves and exchanges made, and those tried for them. */
const MOST_STEPS = 400
const MOST_TRIED = 4_000_000
/** How often two sides share out anew, and the branches looked at each time. */
const MOST_ANEW = 40
const MOST_BETWEEN_TWO = 3000

/** So that the higher of two scores weighs far more. */
const steep = (score: number) => (score * score) ** 4

function scoreOf(sum: Sums): number {
  const { excess } = sum
  return (sum.side.counts ? sum.strain : 0) + (excess > 0 ? OVER.atAll + OVER.byLimit * excess : 0)
}

/** A choice that keeps what sides may take, and no more is said of it. */
export const firstChoice = (sharing: Sharing): Int32Array => greedyChoices(sharing)[0]!

/** The best choice found from several beginnings, the given ones among them. */
export function goodChoice(sharing: Sharing, starts: Int32Array[]): Int32Array {
  const begun = [...starts.map(start => start.slice()), ...greedyChoices(sharing)]
  let best: { carriers: Int32Array; score: number } | null = null
  for (const carriers of begun) {
    const score = improved(sharing, carriers, 0)
    if (!best || score < best.score - GAIN) best = { carriers, score }
  }
  const { carriers } = best!
  improved(sharing, carriers, MOST_ANEW)
  return carriers
}

/** The largest first, each to the side that is then the least strained: by what it weighs at most, and in all. */
function greedyChoices(sharing: Sharing): Int32Array[] {
  const { pieces, sides } = sharing
  const sizes = [sizesBy(sharing, values => Math.max(...values)), sizesBy(sharing, sumOf)]
  return sizes.map(size => {
    const order = Array.from({ length: pieces }, (_, i) => i).sort((a, b) => size[b]! - size[a]! || a - b)
    const sums = sides.map(side => new Sums(side))
    const carriers = new Int32Array(pieces)
    for (const i of order) {
      let best = -1
      let least = Number.POSITIVE_INFINITY
      sides.forEach((side, s) => {
        if (!side.allowed[i]) return
        sums[s]!.add(i)
        const score = scoreOf(sums[s]!)
        sums[s]!.takeAway(i)
        if (score < least) {
          best = s
          least = score
        }
      })
      carriers[i] = best
      sums[best]!.add(i)
    }
    return carriers
  })
}

const sumOf = (values: number[]) => values.reduce((sum, value) => sum + value, 0)

/** How large each piece is: of what it adds to the loads of all sides, each over the side's divisor. */
export function sizesBy({ pieces, sides }: Sharing, of: (values: number[]) => number): number[] {
  return Array.from({ length: pieces }, (_, i) =>
    of([0, ...sides.flatMap(({ loads, divisor }) => loads.map(({ each }) => each[i]! / divisor))]),
  )
}

/** Changes the choice in place until nothing helps the worst side; its score. */
function improved(sharing: Sharing, carriers: Int32Array, mostAnew: number): number {
  const { sides } = sharing
  const sums = sides.map(side => new Sums(side))
  carriers.forEach((s, i) => {
    sums[s]!.add(i)
  })
  const scores = sums.map(scoreOf)
  const aside = new Float64Array(Math.max(...sums.map(({ values }) => values.length)))
  const mostSteps = Math.min(MOST_STEPS, MOST_TRIED / (carriers.length * sides.length + 1))
  for (let steps = 0; steps < mostSteps && evenedOut(); steps++);
  const worstOf = () => scores.reduce((worst, score, s) => (score > scores[worst]! ? s : worst), 0)
  let steps = 0
  for (let anew = 0; ; ) {
    const worst = worstOf()
    if (steps++ < mostSteps && eased(worst)) continue
    if (anew++ >= mostAnew || !sharedAnew(worst)) break
  }
  return scores[worstOf()]!

  /** One piece moved, or two exchanged, between any sides, so that high scores grow fewer: what the worst side is waiting for. */
  function evenedOut(): boolean {
    let best: { give: number; take: number; to: number } | null = null
    let gain = GAIN
    const weighed = scores.map(steep)
    const tried = (give: number, take: number, to: number) => {
      const from = carriers[give]!
      const now = weighed[from]! + weighed[to]!
      const then = steep(changed(from, give, take)) + steep(changed(to, take, give))
      if ((now - then) / now <= gain) return
      gain = (now - then) / now
      best = { give, take, to }
    }
    carriers.forEach((from, give) => {
      sides.forEach((side, to) => {
        if (to !== from && side.allowed[give]) tried(give, -1, to)
      })
      if (carriers.length > MOST_EVENED) return
      for (let take = give + 1; take < carriers.length; take++) {
        const to = carriers[take]!
        if (to !== from && sides[to]!.allowed[give] && sides[from]!.allowed[take]) tried(give, take, to)
      }
    })
    if (!best) return false
    exchange(best)
    return true
  }

  function exchange({ give, take, to }: { give: number; take: number; to: number }) {
    const from = carriers[give]!
    put(give, to)
    if (take >= 0) put(take, from)
  }

  /** One piece given away, or exchanged, so that neither side is as badly off as the worst was. */
  function eased(from: number): boolean {
    let best: { give: number; take: number; to: number } | null = null
    let least = scores[from]! - GAIN
    const tried = (give: number, take: number, to: number) => {
      const after = Math.max(changed(from, give, take), changed(to, take, give))
      if (after >= least) return
      least = after
      best = { give, take, to }
    }
    carriers.forEach((owner, give) => {
      if (owner !== from) return
      for (let to = 0; to < sides.length; to++) {
        if (to === from || !sides[to]!.allowed[give]) continue
        tried(give, -1, to)
        if (carriers.length > MOST_EXCHANGED) continue
        carriers.forEach((other, take) => {
          if (other === to && sides[from]!.allowed[take]) tried(give, take, to)
        })
      }
    })
    if (!best) return false
    exchange(best)
    return true
  }

  /** The score of a side without one piece and with another; −1: none. */
  function changed(s: number, without: number, withIt: number): number {
    const sum = sums[s]!
    const { values } = sum
    for (let r = 0; r < values.length; r++) aside[r] = values[r]!
    if (without >= 0) sum.takeAway(without)
    if (withIt >= 0) sum.add(withIt)
    const score = scoreOf(sum)
    for (let r = 0; r < values.length; r++) values[r] = aside[r]!
    return score
  }

  function put(piece: number, to: number) {
    const from = carriers[piece]!
    sums[from]!.takeAway(piece)
    sums[to]!.add(piece)
    carriers[piece] = to
    for (const s of [from, to]) scores[s] = scoreOf(sums[s]!)
  }

  /** All that the worst side and another have, shared out between the two as well as can be found. */
  function sharedAnew(worst: number): boolean {
    for (let other = 0; other < sides.length; other++) {
      if (other === worst) continue
      const found = betweenTwo(worst, other)
      if (!found) continue
      found.forEach((to, piece) => {
        if (carriers[piece] !== to) put(piece, to)
      })
      return true
    }
    return false
  }

  function betweenTwo(a: number, b: number): Map<number, number> | null {
    const pieces = [...carriers.keys()].filter(i => carriers[i] === a || carriers[i] === b)
    const pair = [a, b] as const
    const weight = (i: number, { loads, divisor }: Side) => (loads[0]?.each[i] ?? 0) / divisor
    pieces.sort((i, j) => weight(j, sides[a]!) - weight(i, sides[a]!) || i - j)
    const pool = { [a]: new Sums(sides[a]!), [b]: new Sums(sides[b]!) }
    let least = Math.max(scores[a]!, scores[b]!)
    let best: Map<number, number> | null = null
    let left = MOST_BETWEEN_TWO
    const chosen = new Map<number, number>()
    const step = (k: number) => {
      const reached = Math.max(scoreOf(pool[a]!), scoreOf(pool[b]!))
      if (reached >= least - GAIN || left-- <= 0) return
      const piece = pieces[k]
      if (piece === undefined) {
        least = reached
        best = new Map(chosen)
        return
      }
      const lighterFirst = scoreOf(pool[a]!) <= scoreOf(pool[b]!) ? pair : [b, a]
      for (const s of lighterFirst) {
        if (!sides[s]!.allowed[piece]) continue
        const before = pool[s]!.values.slice()
        pool[s]!.add(piece)
        chosen.set(piece, s)
        step(k + 1)
        pool[s]!.values.set(before)
      }
      chosen.delete(piece)
    }
    step(0)
    return best
  }
}
