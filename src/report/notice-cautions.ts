// The engine's notices as cautions: those of one cause are told as one, with all the legs or days they concern.

import { ASSUMED_AIR_C, ASSUMED_BODY, type Notice, type Reckoning } from '../reckon'
import { capital, listText } from '../units'
import { type Caution, ITS_FIGURES, itsFigures, lightestSetup } from './caution'
import { type Formats, percentOver } from './formats'

export function noticeCautions(reckoning: Pick<Reckoning, 'notices' | 'packs'>, formats: Formats): Caution[] {
  const codes = new Set(reckoning.notices.map(({ code }) => code))
  return [...codes].flatMap(code => worded(code, reckoning, formats))
}

function worded(
  code: Notice['code'],
  { notices, packs }: Pick<Reckoning, 'notices' | 'packs'>,
  formats: Formats,
): Caution[] {
  const { water } = formats
  const all = <C extends Notice['code']>(of: C) =>
    notices.filter((notice): notice is Extract<Notice, { code: C }> => notice.code === of)
  switch (code) {
    // Told from the carries, with the stretches they concern.
    case 'water-short':
      return []
    case 'water-containers-missing':
      return [
        {
          signal: 'NOTICE',
          about: 'water',
          short: 'No bottles in the gear',
          text: 'No item in the gear holds water. So all water is counted inside the main body, without limit. Add your bottles with what they hold.',
        },
      ]
    case 'resting-assumed':
      return [
        {
          signal: 'NOTICE',
          about: 'energy',
          asks: itsFigures({ kind: 'resting-energy' }),
          short: 'Height or age not given',
          text: `Where height or age is not given, energy figures assume ${formats.cm(ASSUMED_BODY.heightCm)} and ${ASSUMED_BODY.ageYears} years: give yours.`,
        },
      ]
    case 'energy-not-for-children':
      return [
        {
          signal: 'NOTICE',
          about: 'energy',
          short: 'No energy figures under 14 years',
          text: 'No energy figures under 14 years: the equations are for adults. Ask a health professional about a child’s food.',
        },
      ]
    case 'energy-out-of-range': {
      const legs = all(code)
      const [is, its] = legs.length === 1 ? ['is', 'its'] : ['are', 'their']
      return [
        {
          signal: 'NOTICE',
          about: 'energy',
          short: 'Faster or steeper than was studied',
          text: `${capital(legsText(legs))} ${is} faster or steeper than the energy equation was made for; ${its} energy is computed at the equation’s limit.`,
        },
      ]
    }
    case 'air-assumed': {
      const legs = all(code)
      return [
        {
          signal: 'NOTICE',
          about: 'heat',
          asks: legs.map(({ leg, name }) => ({
            figure: legs.length === 1 ? ITS_FIGURES : `Figures of the leg to ${name}`,
            about: { kind: 'heat', leg },
          })),
          short: 'Air temperature not given',
          text: `No air temperature for ${legsText(legs)}: ${formats.degrees(ASSUMED_AIR_C)} is assumed. Hotter air asks for more water: give it under Weather.`,
        },
      ]
    }
    case 'water-cap-hour':
      return [
        {
          signal: 'WARNING',
          about: 'heat',
          short: 'Too hot to drink enough',
          text: `On ${legsText(all(code))} the body would lose more than drinking can replace. Change hour, pace or route; do not just drink more.`,
        },
      ]
    case 'water-cap-day': {
      const days = all(code).sort((a, b) => b.litres - a.litres)
      const [first, ...others] = days.map(
        ({ day, litres }, i) =>
          `day ${day} ${i === 0 ? 'asks ' : ''}for ${water(litres)}${i === 0 ? ' of water' : ''}`,
      )
      return [
        {
          signal: 'WARNING',
          about: 'heat',
          asks: days.map(({ day }) => ({
            figure: days.length === 1 ? ITS_FIGURES : `Figures of day ${day}`,
            about: { kind: 'day', day: day - 1 },
          })),
          short: 'More water a day than a body can take',
          text: `${capital(listText([first!, ...others]))}, more than a body should take in a day. Change hour, pace or route; do not just drink more.`,
        },
      ]
    }
    case 'water-below-heat-table': {
      const legs = all(code)
      const thirstiest = legs.reduce((a, b) => (b.tableLitresPerHour > a.tableLitresPerHour ? b : a))
      return [
        {
          signal: 'CAUTION',
          about: 'water',
          asks: itsFigures({ kind: 'heat-table', leg: thirstiest.leg }),
          short: 'Too little water for this heat',
          text: `You plan on ${formats.flow(thirstiest.litresPerHour)}. On ${legsText(legs)} the heat table asks for ${legs.length > 1 ? 'up to ' : ''}${formats.flow(thirstiest.tableLitresPerHour)} at that effort: raise it, or let the app work it out from heat.`,
        },
      ]
    }
    case 'load-over-common-practice': {
      const { share, limit } = all(code)[0]!
      const lightest = lightestSetup(packs)
      return [
        {
          signal: 'CAUTION',
          about: 'load',
          atAnswer: true,
          asks: itsFigures({ kind: 'load-share', ...(lightest === null ? {} : { setup: lightest }) }),
          short: `Load is ${percentOver(share, limit, formats)} of your body mass`,
          text: `${lightest === null ? 'Without a pack the load' : 'With the lightest pack the load'} is ${percentOver(share, limit, formats)} of your body mass; common practice, with no source behind it, stops at ${formats.percent(limit)}. Heavier packs are linked with more strain and probably more injury: leave items at home, share the load, or resupply or find water more often.`,
        },
      ]
    }
  }
}

/** "the leg to Fell Tarn", "the legs to Fell Tarn and Hut". */
const legsText = (legs: readonly { name: string }[]) =>
  `the ${legs.length === 1 ? 'leg' : 'legs'} to ${listText(legs.map(({ name }) => name))}`
