// The load and the main-body litres at every moment: what the stock, the water and the packing model make of the gear.

import { overflowAt } from './containers'
import { type Ledger, totalAt } from './ledger'
import { type Stock, type Stream, SUPPLIES, type Supply, unitsOf } from './provisions'
import { type Packing, roomFor } from './room'
import type { Moments, Route } from './route'
import type { Moment, Shares } from './types'
import type { Water } from './water'

const left = (...streams: Stream[]) => placesOf(it => it.state === 'left' && streams.includes(it.stream))
const placesOf = (counts: (supply: Supply) => boolean): number[] =>
  SUPPLIES.flatMap((supply, i) => (counts(supply) ? [i] : []))

/** Which of `SUPPLIES` each share is made of. */
const MADE_OF = {
  kept: left('kept'),
  daily: left('dailyAgain', 'dailyOnce'),
  nightly: left('nightlyAgain', 'nightlyOnce'),
  spread: left('spread'),
  rubbish: placesOf(({ state }) => state === 'used'),
} as const

export function momentsOf(
  route: Route,
  ledger: Ledger,
  { stocks, water, packing }: { stocks: Stock[]; water: Water[]; packing: Packing },
): Moment[] {
  return route.moments.map((when, m) =>
    momentAt(when, ledger, { stock: stocks[m]!, water: water[m]!, packing }),
  )
}

/** Load and litres of the ledger's things at one stock, with this water aboard. */
function momentAt(
  { stop, phase, day, km, hours }: Moments,
  ledger: Ledger,
  { stock, water, packing }: { stock: Stock; water: Water; packing: Packing },
): Moment {
  const units = unitsOf(stock)
  const overflow = overflowAt(ledger.filling, units)
  const total = totalAt(ledger, units)
  const kg = sharesOf(
    ledger.accounts.map((account, supply) => units[supply]! * account.kg),
    water.litres,
  )
  const litres = sharesOf(
    ledger.accounts.map(
      ({ rigidLitres, softLitres }, supply) =>
        units[supply]! * (rigidLitres + softLitres) + overflow[supply]!,
    ),
    water.softBodyLitres,
  )
  const softLitres = total.softLitres + sumOf(overflow) + water.softBodyLitres
  return {
    stop,
    phase,
    day,
    km,
    hours,
    kg: {
      kept: kg.kept,
      daily: kg.daily,
      nightly: kg.nightly,
      spread: kg.spread,
      water: kg.water,
      rubbish: kg.rubbish,
      total: totalOf(kg),
    },
    wantedLitres: 0,
    fullWaterKg: totalOf(kg),
    bodyLitres: roomFor(total.rigidLitres, softLitres, packing).bodyLitres,
    rigidLitres: total.rigidLitres,
    softLitres,
    outsideLitres: total.pocketLitres,
    litres,
    bodyKg: total.bodyKg + water.bodyLitres,
    loose: { kg: total.softKg, litres: total.softLitres },
  }
}

/** The shares of what each of `SUPPLIES` comes to. */
function sharesOf(amounts: number[], water: number): Shares {
  const of = (places: readonly number[]) => {
    let sum = 0
    for (let from = 0; from < amounts.length; from += SUPPLIES.length)
      for (const place of places) sum += amounts[from + place]!
    return sum
  }
  return {
    kept: of(MADE_OF.kept),
    daily: of(MADE_OF.daily),
    nightly: of(MADE_OF.nightly),
    spread: of(MADE_OF.spread),
    water,
    rubbish: of(MADE_OF.rubbish),
  }
}

const totalOf = ({ kept, daily, nightly, spread, water, rubbish }: Shares) =>
  kept + daily + nightly + spread + water + rubbish

const sumOf = (numbers: number[]) => numbers.reduce((sum, n) => sum + n, 0)
