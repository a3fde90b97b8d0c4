// The rows of who carries, and of the trip with its stops and habits.

import { CAPS } from '../caps'
import type * as types from '../types'
import { DIN, JUDGEMENT, PRACTICE } from './origins'
import { amount, choice, list, named, part, type RowsFor, text, truth } from './rows'

export const carrier = {
  massKg: amount('mass', 10, 300, 'kg', { need: true, label: 'Body mass' }),
  heightCm: amount('length', 50, 250, 'cm', { label: 'Height' }),
  ageYears: amount('number', 1, 110, 'years', { label: 'Age' }),
  sex: choice({ female: 'Female', male: 'Male' }, { label: 'Sex' }),
  loadShareLimit: amount('share', 0.01, 1, 'of body mass', {
    depends: true,
    origin: PRACTICE,
    label: 'Carry at most',
  }),
} satisfies RowsFor<types.Carrier>

const FROM_0 = 'counted from 0'

export const packChoice = {
  pack: amount('count', 0, CAPS.packs - 1, FROM_0, { whole: true, need: true }),
  setup: amount('count', 0, CAPS.setups - 1, FROM_0, { whole: true, usual: 0 }),
} satisfies RowsFor<types.PackChoice>

export const person = {
  id: text(named),
  name: text({ usual: '', label: 'Name' }),
  ...carrier,
  waterShare: amount('share', 0, 5, 'times the habits of the trip', { usual: 1, label: 'Drinks' }),
  pack: part(packChoice),
} satisfies RowsFor<types.Person>

export const split = {
  by: text({ filled: true, usual: 'limit', label: 'Fair means' }),
} satisfies RowsFor<types.SplitWish>

export const leg = {
  km: amount('distance', 0, 500, 'km', { need: true, label: 'Distance' }),
  ascentM: amount('climb', 0, 20000, 'm', { usual: 0, label: 'Climb' }),
  descentM: amount('climb', 0, 20000, 'm', { usual: 0, label: 'Descent' }),
  hours: amount('duration', 0, 200, 'h', { origin: DIN, label: 'Walking time' }),
  airC: amount('temperature', -60, 60, '°C', { label: 'Air' }),
  humidity: amount('share', 0, 1, 'as a share of 1', { label: 'Humidity' }),
  sun: truth({ label: 'Full sun' }),
  ground: choice(
    { paved: 'Paved', trail: 'Trail', rough: 'Rough path', brush: 'Off the path', sand: 'Loose sand' },
    { usual: 'trail', label: 'Ground', opens: true },
  ),
} satisfies RowsFor<types.Leg>

export const stop = {
  name: text({ ...named, label: 'Name' }),
  // A source that nobody vouched for does not count: unstated water is none.
  water: choice({ sure: 'Sure', doubtful: 'Doubtful', none: 'None' }, { usual: 'none', label: 'Water here' }),
  nights: amount('count', 0, 60, 'nights', { whole: true, usual: 0, steps: true, label: 'Nights' }),
  meals: choice(
    { carried: 'From the pack', provided: 'Provided' },
    { usual: 'carried', label: 'Meals here' },
  ),
  resupply: truth({ usual: false, label: 'Resupply here: food is bought again' }),
  shop: truth({ usual: false, label: 'A shop is here: food can be bought' }),
  leg: part(leg),
} satisfies RowsFor<types.Stop>

export const pace = {
  flatKmh: amount('speed', 0.2, 20, 'km/h', { usual: 4, origin: DIN, label: 'On the flat' }),
  climbMPerH: amount('verticalSpeed', 20, 5000, 'm/h', { usual: 300, origin: DIN, label: 'Climbing' }),
  descendMPerH: amount('verticalSpeed', 20, 10000, 'm/h', { usual: 500, origin: DIN, label: 'Going down' }),
} satisfies RowsFor<types.Pace>

export const water = {
  litresPerHour: amount('flow', 0, 5, 'L/h', {
    or: 'from-heat',
    usual: 0.5,
    origin: PRACTICE,
    label: 'Water per hour of walking',
  }),
  campLitres: amount('volume', 0, 50, 'L', { usual: 3, origin: PRACTICE, label: 'For a night in camp' }),
  reserveLitres: amount('volume', 0, 50, 'L', { usual: 0.5, origin: JUDGEMENT, label: 'Reserve' }),
  trustDoubtful: truth({ usual: false, label: 'Count on doubtful water sources' }),
} satisfies RowsFor<Omit<types.WaterHabits, 'heatShare'>>

export const meals = {
  breakfast: amount('share', 0, 1, 'of a day', { usual: 0.25, label: 'Breakfast' }),
  trail: amount('share', 0, 1, 'of a day', { usual: 0.4, label: 'On the trail' }),
  supper: amount('share', 0, 1, 'of a day', { usual: 0.35, label: 'Supper' }),
  supperAfterEnd: truth({ usual: true, label: 'Dinner on the last day is after the trip' }),
  spareDays: amount('number', 0, 60, 'days', { usual: 0.5, origin: JUDGEMENT, label: 'Spare rations' }),
  ration: choice(
    { fixed: 'As listed in the gear', energy: 'Scaled to each day’s energy' },
    { usual: 'fixed', label: 'A day’s ration is' },
  ),
  deficit: amount('share', 0, 0.9, 'of a day', { usual: 0, label: 'Energy to go without' }),
} satisfies RowsFor<types.Meals>

export const weather = {
  airC: { ...leg.airC, hint: 'The hottest you expect.' },
  humidity: { ...leg.humidity, usual: 0.5, origin: JUDGEMENT },
  sun: truth({ usual: false, label: 'Full sun, little shade' }),
} satisfies RowsFor<types.Weather>

export const trip = {
  stops: list(stop, { least: 2, most: CAPS.stops, what: 'stops' }, { need: true }),
  pace: part(pace),
  water: part(water),
  meals: part(meals),
  weather: part(weather),
  wet: truth({ usual: true, label: 'Rain is likely: a pack that is not sealed gets a liner' }),
} satisfies RowsFor<types.Trip>
