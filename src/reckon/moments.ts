// The load and the main-body litres at every moment: what the stock, the water and the packing model make of the gear.

import { amount, type Ledger, overflowOf, total } from './ledger'
import { STREAMS, type Stock, type Stream } from './provisions'
import { type Packing, roomFor } from './room'
import type { Route } from './route'
import type { Moment, Shares } from './types'
import type { Water } from './water'

const SHARE_OF: Record<Stream, Exclude<keyof Shares, 'water' | 'rubbish'>> = {
  kept: 'kept',
  dailyAgain: 'daily',
  dailyOnce: 'daily',
  nightlyAgain: 'nightly',
  nightlyOnce: 'nightly',
  spread: 'spread',
}

export function momentsOf(
  route: Route,
  ledger: Ledger,
  { stocks, water, packing }: { stocks: Stock[]; water: Water[]; packing: Packing },
): Moment[] {
  return route.moments.map((when, m) => ({ ...when, ...packed(ledger, stocks[m]!, water[m]!, packing) }))
}

/** Load and litres of the ledger's things at one stock, with this water aboard. */
function packed(ledger: Ledger, stock: Stock, water: Water, packing: Packing) {
  const overflow = overflowOf(ledger, stock)
  const kg = { ...noShares(), water: water.litres }
  const litres = { ...noShares(), water: water.softBodyLitres }
  for (const stream of STREAMS) {
    const share = SHARE_OF[stream]
    kg[share] += amount(ledger, stock, { stream, state: 'left', figure: 'kg' })
    kg.rubbish += amount(ledger, stock, { stream, state: 'used', figure: 'kg' })
    for (const figure of ['rigidLitres', 'softLitres'] as const) {
      litres[share] += amount(ledger, stock, { stream, state: 'left', figure })
      litres.rubbish += amount(ledger, stock, { stream, state: 'used', figure })
    }
    litres[share] += overflow.litres[stream].left
    litres.rubbish += overflow.litres[stream].used
  }
  const rigidLitres = total(ledger, stock, 'rigidLitres')
  const looseLitres = total(ledger, stock, 'softLitres')
  const softLitres = looseLitres + overflow.overflowLitres + water.softBodyLitres
  return {
    kg: { ...kg, total: sumOf(kg) },
    wantedLitres: 0,
    bodyLitres: roomFor(rigidLitres, softLitres, packing).bodyLitres,
    rigidLitres,
    softLitres,
    outsideLitres: total(ledger, stock, 'pocketLitres'),
    litres,
    bodyKg: total(ledger, stock, 'bodyKg') + water.bodyLitres,
    loose: { kg: total(ledger, stock, 'softKg'), litres: looseLitres },
  }
}

const noShares = (): Shares => ({ kept: 0, daily: 0, nightly: 0, spread: 0, water: 0, rubbish: 0 })

const sumOf = ({ kept, daily, nightly, spread, water, rubbish }: Shares) =>
  kept + daily + nightly + spread + water + rubbish
