// Section 9 of the model page once more, written from the page: what the hiker's packings make of factor and spread,
// with every sum over all pairs.

import type { LitresFrom, PastPacking, Plan } from '../../src/plan'
import { BY_HABIT, doubleSum, type Listed } from './naive-heap'

const PACK_WIDTH = { 'test-method': 0.05, measured: 0.05, stated: 0.1, guess: 0.18 }
const GROUPS: LitresFrom[] = ['filled', 'dimensions', 'stated', 'guess', 'kind']

interface List {
  d: number
  things: Listed[]
}

const total = (things: Listed[]) => things.reduce((sum, { u }) => sum + u, 0)

const isSame = (a: Listed, b: Listed) =>
  a.id === b.id && a.litresFrom === b.litresFrom && Math.abs(a.litres - b.litres) <= 1e-9

function alike(j: List, k: List, habit: number): number {
  let whole = 0
  for (const group of GROUPS) {
    const r = BY_HABIT.includes(group) ? habit : 0
    const inJ = j.things.filter(({ litresFrom, u }) => litresFrom === group && u > 0)
    const inK = k.things.filter(({ litresFrom, u }) => litresFrom === group && u > 0)
    const sharedJ = inJ.filter(a => inK.some(b => isSame(a, b)))
    const sharedK = inK.filter(b => inJ.some(a => isSame(a, b)))
    if (sharedJ.length === 0) continue
    const products = sharedJ.reduce((sum, a) => sum + a.u * sharedK.find(b => isSame(a, b))!.u, 0)
    const [xj, xk, Aj, Ak] = [total(sharedJ), total(sharedK), total(inJ), total(inK)]
    whole += (1 - r) * products + r * (xj * Ak + Aj * xk - xj * xk)
  }
  return whole
}

/** F and s of the list packed now, which takes W0 litres for F = 1. */
export function calibrated({ settings, packings }: Plan, W0: number, now: List): { F: number; s: number } {
  const { personalFactor: F0, personalFactorSpread, habitCorrelation: r, readingSpread } = settings
  const s0 = personalFactorSpread ?? settings.handSpread
  const d = ({ d: own }: List) => (personalFactorSpread === null ? own : 0)
  const kappa = (a: List, b: List) => s0 ** 2 + 0.5 * d(a) * d(b) + alike(a, b, r)
  const m2 = doubleSum(
    now.things.map(({ litresFrom, u }) => ({ group: litresFrom, u })),
    r,
  )
  const P = s0 ** 2 + d(now) ** 2 + m2
  const g = packings.map(list => kappa(now, list))
  if (W0 === 0 || g.every(value => value === 0)) return { F: F0, s: Math.sqrt(P) }
  const a = ({ packFrom }: PastPacking) => PACK_WIDTH[packFrom]
  const G = packings.map((j, y) =>
    packings.map((k, x) => {
      const onePack = x === y || (j.pack !== null && j.pack === k.pack)
      const own = x === y ? readingSpread ** 2 + 0.5 * d(k) ** 2 : 0
      return kappa(j, k) + (onePack ? (a(j) * a(k)) / 3 : 0) + own
    }),
  )
  const raw = g.map((gk, k) => gk / (P * G[k]![k]! - gk ** 2))
  const scale = raw.reduce((sum, b) => sum + b, 0)
  const b = raw.map(value => value / scale)
  let B = 0
  let Q = 0
  let found = 0
  packings.forEach((packing, k) => {
    B += b[k]! * g[k]!
    found += b[k]! * ((packing.p * packing.packLitres) / packing.W / F0 - 1)
    packings.forEach((_, j) => {
      Q += b[j]! * b[k]! * G[j]![k]!
    })
  })
  const F = F0 * (1 + (B / Q) * found)
  return {
    F: Math.min(2, Math.max(0.5, F)),
    s: Math.sqrt(Math.max(P - B ** 2 / Q, readingSpread ** 2)),
  }
}
