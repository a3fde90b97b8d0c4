// The trial run beside the formula, in words: each figure by both, how far apart they are, and whether chance alone
// makes that. Standard errors of a trial of n: of the mean sd/√n; of the sd at most a normal's, sd/√(2n); of the ends
// of the likely range those of a normal's quantiles, √(p q/n) over the density there, 1.71 sd/√n.

import type { Plan } from '../../plan'
import { handSpreadOf, meanFilling, type Simulation } from '../../reckon'
import { formatQuantity } from '../../units'
import { type Formats, marginText } from '../formats'
import { likelyRange } from './likely'

export interface SimulationRow {
  name: string
  formula: string
  trial: string
  /** "0.3 L more than the formula: further apart than chance makes"; null where chance alone makes it. */
  said: string | null
}

export interface SimulationWords {
  rows: SimulationRow[]
  /** Within chance, or within what rounding hides. */
  agrees: boolean
  /** Whether they agree, and what it comes to where they do not. */
  verdict: string
  /** What lies behind a difference; empty where there is none. */
  reasons: string[]
  /** The shapes that both draw from. */
  shapes: string
}

/** Further apart than so many standard errors is more than chance: four figures all pass by chance 99 times in 100. */
const FAR = 3
const QUANTILE = 1.71
/** What the shown need is rounded to, L. */
const WHOLE = 0.5

export function simulationInWords(simulation: Simulation, plan: Plan, formats: Formats): SimulationWords {
  const { runs, meanLitres, sdLitres, quantiles, formula, otherTermShare } = simulation
  const { low, high } = likelyRange(formula)
  const error = sdLitres / Math.sqrt(runs)
  const litres = (amount: number) =>
    formatQuantity('volume', amount, { system: formats.system, unit: 'L', digits: 2 })
  const figures = [
    { name: 'On average', by: formula.bodyLitres, tried: meanLitres, error },
    {
      name: 'Plus or minus, as a standard deviation',
      by: formula.sigmaV,
      tried: sdLitres,
      error: error / Math.SQRT2,
    },
    { name: '1 of 10 stay under', by: low, tried: quantiles.p10, error: QUANTILE * error },
    { name: '9 of 10 stay under', by: high, tried: quantiles.p90, error: QUANTILE * error },
  ]
  const rows = figures.map(({ name, by, tried, error: sampling }): SimulationRow => {
    const apart = tried - by
    const byChance = Math.abs(apart) <= FAR * sampling + 1e-9 * formula.bodyLitres
    const size = () => `${marginText(apart, formats.litres)} ${apart < 0 ? 'less' : 'more'} than the formula`
    return {
      name,
      formula: litres(by),
      trial: litres(tried),
      said: byChance ? null : `${size()}: further apart than chance makes`,
    }
  })
  const allByChance = rows.every(row => row.said === null)
  const most = Math.max(...figures.map(({ by, tried }) => Math.abs(tried - by)))
  const count = formatQuantity('number', runs, { system: formats.system, digits: 0 })
  // What rounding hides is nobody's alarm; that chance does not make it is said all the same.
  const agrees = allByChance || most < WHOLE
  return {
    rows,
    agrees,
    verdict: verdictOf(),
    reasons: allByChance ? [] : reasonsOf(),
    shapes: shapesOf(plan, formats),
  }

  function verdictOf(): string {
    if (allByChance)
      return `Formula and simulation agree: no figure lies further apart than chance makes in ${count} packings.`
    const size = marginText(most, formats.litres)
    return agrees
      ? `Formula and simulation agree to ${size}, less than the rounding.`
      : `Formula and simulation differ by more than chance makes in ${count} packings, by ${size} at most. Use the simulation where it asks for more.`
  }

  function reasonsOf(): string[] {
    const bend =
      otherTermShare >= 0.005
        ? [
            `In ${Math.round(otherTermShare * 100)} of 100 packings the other rule of the packing model decided: rigid items instead of soft ones, or the reverse. The formula follows one rule only.`,
          ]
        : []
    const beyond = agrees ? [`It is more than chance makes in ${count} packings.`] : []
    return [...beyond, ...bend, 'The formula takes the sum for bell-shaped; what it adds up is not.']
  }
}

function shapesOf({ settings, packings }: Plan, { percent }: Formats): string {
  const hand = percent(handSpreadOf(settings))
  const filling = meanFilling(settings.fillEfficiency)
  const evenly = filling === 0.5 ? 'evenly ' : ''
  const gaps =
    settings.personalFactorSpread === null
      ? `Your hand is drawn from a bell shape of ±\u00a0${hand}, how well soft items fill the gaps ${evenly}from not at all to wholly${evenly ? '' : `, ${percent(filling)} on average`}.`
      : `Your packing factor is drawn from a bell shape of ±\u00a0${hand}.`
  const aside = packings.length > 0 ? ' Both leave your own packings aside, which narrow the range.' : ''
  return `The simulation draws the litres of each item again for every packing. Litres by kind come from a triangle between their ends. All others come evenly from least to most. Items judged by one habit err together. ${gaps}${aside} Both use the same model and the same litres. A simulation shows whether the formula adds up, not whether they are true.`
}
