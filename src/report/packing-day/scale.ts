// The packed pack on the scale, beside what is calculated for the same state, and what the difference may come from.

import { fieldPath, isMarked, itemName, type Plan, type TripLog } from '../../plan'
import { compositionAt, massHalfWidth, type Reckoning } from '../../reckon'
import { counted } from '../../units'
import type { Formats } from '../formats'
import { missingOf, withoutText } from '../missing'
import { type Guess, guessesAboard, roomOf, type Shared, spreadOver } from './spread'

export interface Weighing {
  readKg: number
  /** Without water and pack. */
  contentsKg: number
  waterLitres: number
  /** With its liner; null: none is taken, or it was weighed without, and none is counted. */
  packKg: number | null
  calculatedKg: number
  /** Of the reading over what is calculated. */
  differenceKg: number
  guesses: Guess[]
  /** By how much the guesses may be off in that direction, and what is stated or weighed. */
  guessedKg: number
  statedKg: number
  shared: Shared
}

interface Asked {
  plan: Plan
  reckoning: Reckoning
  log: TripLog
  /** The place of the set-up that is taken among `reckoning.packs`; null: none is. */
  setup: number | null
}

/** The water that the trip leaves with, L. */
export const startWater = ({ moments }: Pick<Reckoning, 'moments'>): number => moments[0]!.kg.water

/** Null while nothing was weighed. `reckoning` must be what `reckon(plan)` gave. */
export function weighingOf({ plan, reckoning, log, setup }: Asked): Weighing | null {
  const { weighedKg: readKg } = log
  if (readKg === undefined) return null
  const { kg } = reckoning.moments[0]!
  const contentsKg = kg.total - kg.water
  const waterLitres = log.weighedWaterLitres ?? kg.water
  const taken = setup === null || log.weighedBare ? undefined : reckoning.packs[setup]
  const packKg = taken ? taken.carriedKg - reckoning.need.peakLoadFullWaterKg : null
  const calculatedKg = contentsKg + waterLitres + (packKg ?? 0)
  const differenceKg = readKg - calculatedKg
  const guesses = guessesAboard(plan, reckoning, log.spread)
  return {
    ...{ readKg, contentsKg, waterLitres, packKg, calculatedKg, differenceKg, guesses },
    guessedKg: roomOf(guesses, differenceKg > 0 ? 'more' : 'less'),
    statedKg: compositionAt(plan, reckoning, 0).reduce((sum, { item, kg }) => {
      return item.massFrom === 'guess' ? sum : sum + kg * massHalfWidth[item.massFrom]
    }, 0),
    shared: spreadOver(guesses, differenceKg),
  }
}

/** A thing that the difference may come from, and the field to look at. */
export interface Cause {
  name: string
  says: string
  path: string
}

/** So many are named. */
const MOST_NAMED = 5

/** The likely causes, the likeliest first. */
export function causesOf(weighing: Weighing, { plan, log }: Asked, formats: Formats): Cause[] {
  const { differenceKg, guesses } = weighing
  const isMore = differenceKg > 0
  const byId = new Map(plan.gear.map(item => [item.id, item]))
  const anyTicked = plan.gear.some(({ id }) => isMarked(log.packed, id))
  const without = isMore
    ? missingOf(plan).mass.map(({ name, path }) => ({ name, path, says: 'has no mass yet' }))
    : []
  const unticked =
    isMore || !anyTicked
      ? []
      : plan.gear
          .filter(({ id, count, stow }) => count > 0 && stow !== 'worn' && !isMarked(log.packed, id))
          .map(({ id, name }) => ({
            name: itemName({ name }),
            path: fieldPath('gear', id, 'massKg'),
            says: 'is not ticked',
          }))
  const roomIn = (guess: Guess) => roomOf([guess], isMore ? 'more' : 'less')
  const guessed = guesses
    .filter(guess => formats.gear(roomIn(guess)) !== formats.gear(0))
    .sort((a, b) => roomIn(b) - roomIn(a))
    .map(guess => ({
      name: itemName(byId.get(guess.id) ?? {}),
      path: fieldPath('gear', guess.id, 'massKg'),
      says: `is a guess: up to ${formats.gear(roomIn(guess))} ${isMore ? 'more' : 'less'}`,
    }))
  const named = new Set(unticked.map(({ path }) => path))
  const others = guessed.filter(({ path }) => !named.has(path))
  return [...without, ...unticked, ...others].slice(0, MOST_NAMED)
}

/** Whether reading and calculation look the same where they are shown. */
export const agrees = ({ differenceKg }: Weighing, { kg }: Formats): boolean =>
  kg(Math.abs(differenceKg)) === kg(0)

/** "0.8 kg more than calculated" */
export const differenceText = ({ differenceKg }: Weighing, { kg }: Formats): string =>
  `${kg(Math.abs(differenceKg))} ${differenceKg > 0 ? 'more' : 'less'} than calculated`

/** What no mass on the list explains; null where the masses may be that far off. */
export function unexplained(weighing: Weighing, plan: Plan, formats: Formats): string | null {
  const { differenceKg, guessedKg, statedKg, packKg } = weighing
  const overKg = Math.abs(differenceKg) - guessedKg - statedKg
  if (formats.kg(Math.max(0, overKg)) === formats.kg(0)) return null
  if (differenceKg > 0 && missingOf(plan).mass.length > 0)
    return `${withoutText(missingOf(plan), 'mass')}: no more can be told before.`
  const look =
    differenceKg > 0
      ? `${packKg === null ? 'the pack itself, ' : ''}items that are not on the list, water in bottles, more food`
      : 'items that are not in the pack, empty bottles, less food'
  return `${formats.kg(overKg)} of it no range on the list explains. Look for ${look}.`
}

/** What sharing it out would do: "0.5 kg over 4 guesses; 0.3 kg stays". */
export function sharedText({ differenceKg, shared }: Weighing, { gear }: Formats): string {
  const { masses, restKg } = shared
  const over = `${gear(Math.abs(differenceKg - restKg))} over ${counted(masses.length, 'guess', 'guesses')}`
  return restKg === 0 ? over : `${over}; ${gear(Math.abs(restKg))} stays`
}

/** What the figures are made of, line by line. */
export function weighingLines(weighing: Weighing, formats: Formats): { label: string; value: string }[] {
  const { kg, gear, water } = formats
  const { contentsKg, waterLitres, packKg, calculatedKg, guessedKg, statedKg } = weighing
  return [
    { label: 'Contents at the start, without water', value: kg(contentsKg) },
    { label: 'Water then', value: water(waterLitres) },
    ...(packKg === null ? [] : [{ label: 'The pack, with its liner', value: gear(packKg) }]),
    { label: 'Calculated', value: kg(calculatedKg) },
    { label: 'On the scale', value: kg(weighing.readKg) },
    { label: 'Guessed masses may be off by', value: gear(guessedKg) },
    { label: 'Stated and weighed ones by', value: gear(statedKg) },
  ]
}
