// The load and the main-body litres at every moment: what the stock, the water and the packing model make of the gear.

import { type Ledger, overflowOf, SUPPLIES, totalAt, unitsOf } from './ledger'
import type { Stock, Stream } from './provisions'
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

/** What each of `SUPPLIES` counts as. */
const SHARES = SUPPLIES.map(({ stream, state }) => (state === 'used' ? 'rubbish' : SHARE_OF[stream]))

export function momentsOf(
  route: Route,
  ledger: Ledger,
  { stocks, water, packing }: { stocks: Stock[]; water: Water[]; packing: Packing },
): Moment[] {
  return route.moments.map((when, m) => ({ ...when, ...packed(ledger, stocks[m]!, water[m]!, packing) }))
}

/** Load and litres of the ledger's things at one stock, with this water aboard. */
function packed(ledger: Ledger, stock: Stock, water: Water, packing: Packing) {
  const units = unitsOf(stock)
  const overflow = overflowOf(ledger, units)
  const kg = { ...noShares(), water: water.litres }
  const litres = { ...noShares(), water: water.softBodyLitres }
  let overflowLitres = 0
  ledger.accounts.forEach((account, supply) => {
    const share = SHARES[supply]!
    kg[share] += units[supply]! * account.kg
    litres[share] += units[supply]! * (account.rigidLitres + account.softLitres) + overflow[supply]!
    overflowLitres += overflow[supply]!
  })
  const total = totalAt(ledger, units)
  const softLitres = total.softLitres + overflowLitres + water.softBodyLitres
  return {
    kg: { ...kg, total: sumOf(kg) },
    wantedLitres: 0,
    bodyLitres: roomFor(total.rigidLitres, softLitres, packing).bodyLitres,
    rigidLitres: total.rigidLitres,
    softLitres,
    outsideLitres: total.pocketLitres,
    litres,
    bodyKg: total.bodyKg + water.bodyLitres,
    loose: { kg: total.softKg, litres: total.softLitres },
  }
}

const noShares = (): Shares => ({ kept: 0, daily: 0, nightly: 0, spread: 0, water: 0, rubbish: 0 })

const sumOf = ({ kept, daily, nightly, spread, water, rubbish }: Shares) =>
  kept + daily + nightly + spread + water + rubbish
