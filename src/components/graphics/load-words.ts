// The sentences of the load line: what is carried at a moment, the peak, and the whole picture in one breath.

import { LOAD_BANDS } from './bands'
import type { LoadFormat, LoadMoment, LoadPicture } from './load-picture'
import { alongOf, peakOf } from './route-line'
import { elevationAt, hasTerrain, rangeOf } from './terrain'
import { isolate, metresText, placeWords, stopName } from './words'

export const hoursText = (hours: number): string => `${hours.toFixed(1)}\u00a0h`

/** How far along the trip a moment is: ", at 13.5 km"; empty where neither km nor hours are known. */
function farWords(moment: LoadMoment, moments: readonly LoadMoment[], format: LoadFormat): string {
  const along = alongOf(moments)
  if (along === 'stops') return ''
  return `, at ${along === 'km' ? format.km(moment.km) : hoursText(moment.hours)}`
}

export type LoadStory = Omit<LoadPicture, 'limits'>

/** "14.7 kg when you leave Larch Spring, day 2, at 13.5 km"; over known terrain also ", 640 m high". */
function momentSentence(index: number, story: LoadStory): string {
  const { moments, stops, format } = story
  const moment = moments[index]!
  const eleM = hasTerrain(story) ? elevationAt(moment.km, story) : null
  const high = eleM === null ? '' : `, ${metresText(eleM, format)} high`
  return `${format.kg(moment.kg.total)} ${placeWords(moment, stops)}${farWords(moment, moments, format)}${high}`
}

/** A moment as a heading and a line below it: "Leaving Larch Spring", "day 2 · 14.1 kg, 16.0 kg with all water". */
export function momentLines(index: number, story: LoadStory): [string, string] {
  const { moments, stops, format } = story
  const { kg, km, stop, phase, day } = moments[index]!
  const head = `${phase === 'arrive' ? 'Reaching' : 'Leaving'} ${isolate(stopName(stops, stop))}`
  const wanted = kg.wanted ?? 0
  const load =
    wanted > 0
      ? `${format.kg(kg.total - wanted)}, ${format.kg(kg.total)} with all water`
      : format.kg(kg.total)
  const eleM = hasTerrain(story) ? elevationAt(km, story) : null
  const high = eleM === null ? '' : ` · ${metresText(eleM, format)} high`
  return [head, `day ${day} · ${load}${high}`]
}

/** The same with its parts, for those who hear it: "…, of it 6.39 kg gear, 6.00 kg water". */
export function momentInFull(index: number, story: LoadStory): string {
  const { kg } = story.moments[index]!
  const parts = LOAD_BANDS.flatMap(({ band, word }) => {
    const part = kg[band] ?? 0
    return part > 0 ? [`${story.format.kg(part)} ${word.toLowerCase()}`] : []
  })
  return momentSentence(index, story) + (parts.length > 0 ? `, of it ${parts.join(', ')}` : '')
}

/** What the picture shows, in full sentences. */
export function loadSummary(shown: LoadPicture): string {
  const { moments, stops, limits, format } = shown
  const first = moments[0]!
  const last = moments.at(-1)!
  const peak = moments[peakOf(moments)]!
  const far = farWords(last, moments, format)
  const limitWords = limits.map(limit => `${isolate(limit.label)} ${format.kg(limit.kg)}`).join(', ')
  return [
    `The load carried along the trip: ${format.kg(first.kg.total)} ${placeWords(first, stops)}; `,
    `most, ${format.kg(peak.kg.total)}, ${placeWords(peak, stops)}; `,
    `${format.kg(last.kg.total)} at the end, ${isolate(stopName(stops, last.stop))}${far}.`,
    limitWords && ` Limits: ${limitWords}.`,
    terrainWords(shown),
  ].join('')
}

function terrainWords(shown: LoadPicture): string {
  const { profile = [], format } = shown
  const range = hasTerrain(shown) ? rangeOf(profile) : null
  if (!range) return ''
  const partly = profile.some(({ eleM }) => eleM === null) ? ', not known everywhere' : ''
  return ` Below it the terrain, from ${metresText(range.lowM, format)} to ${metresText(range.highM, format)}${partly}.`
}
