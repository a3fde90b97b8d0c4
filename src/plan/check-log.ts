// What is noted of a trip, checked where it comes from outside: a list of ticks whose items are gone is sound, a value of
// another kind is not.

import { isBranch } from './copies'
import { isWithin, type Limit } from './fields'
import { TRIP_LOG_LIMITS, type TripLog } from './trip-log'

type Path = string[]
type Check = (value: unknown) => Path[]

/** More marks than a plan has items or stops were made by nobody. */
const MOST_ENTRIES = 20_000
const ID_CHARS = 200

const sound =
  (isSound: (value: unknown) => boolean): Check =>
  value =>
    isSound(value) ? [] : [[]]

/** A number past its range is one that somebody typed, and stays. */
const amount = sound(value => typeof value === 'number' && Number.isFinite(value) && value >= 0)

/** By the ids of things that may be gone. */
const byId =
  (check: Check): Check =>
  value => {
    if (!isBranch(value)) return [[]]
    const entries = Object.entries(value)
    if (entries.length > MOST_ENTRIES) return [[]]
    return entries.flatMap(([id, entry]) =>
      id in {} || id.length > ID_CHARS ? [[id]] : check(entry).map(path => [id, ...path]),
    )
  }

const record =
  (checks: Readonly<Record<string, Check>>): Check =>
  value =>
    isBranch(value)
      ? Object.entries(value).flatMap(([key, entry]) =>
          Object.hasOwn(checks, key) ? checks[key]!(entry).map(path => [key, ...path]) : [[key]],
        )
      : [[]]

/** A record that is nothing without each of these. */
const whole =
  (check: Check, ...keys: string[]): Check =>
  value =>
    isBranch(value) && keys.every(key => key in value) ? check(value) : [[]]

const yes = sound(value => value === true)
const marks = byId(yes)
const inRange = (limit: Limit) => sound(value => typeof value === 'number' && isWithin(value, limit))
const times = byId(inRange(TRIP_LOG_LIMITS.minutes))

const LOG = record({
  packed: marks,
  weighedKg: amount,
  weighedWaterLitres: amount,
  weighedBare: yes,
  spread: byId(whole(record({ fromKg: amount, toKg: amount }), 'fromKg', 'toKg')),
  packing: sound(value => typeof value === 'string' && value.length <= ID_CHARS),
  left: byId(record({ foodKg: amount, fuelKg: amount, waterLitres: amount })),
  reached: times,
  setOff: times,
  unused: marks,
  foodOverKg: amount,
  rationKg: amount,
  foodPlanned: whole(record({ packedKg: amount, rations: amount }), 'packedKg', 'rations'),
} satisfies Record<keyof TripLog, Check>)

/** The places in a log of unknown origin that hold what no log can; the empty path is the log itself. */
export const badLogPaths = (log: unknown): Path[] => LOG(log)
