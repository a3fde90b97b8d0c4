// What a hiker must know of a measured track before using its numbers, in sentences.

import type { Formats } from '../../report'
import { SMOOTHING_KM, THRESHOLD_M } from './climb'
import { BESIDE_M } from './passes'
import { SNAP_KM } from './split'
import type { MeasuredTrack } from './types'

/** Points farther apart than this leave the way between them untold; judgement of ours. */
const FAR_KM = 1

export function trackNotes(track: MeasuredTrack, formats: Formats): string[] {
  const notes = [elevationNote(track, formats)]
  const { count, km } = track.gaps
  if (count > 0)
    notes.push(
      `${count === 1 ? 'One jump' : `${count} jumps`} between segments (${formats.km(km)} in a straight line) not counted as walked.`,
    )
  if (track.longestStepKm > FAR_KM)
    notes.push(
      `Points lie up to ${formats.km(track.longestStepKm)} apart: the way between them is taken as straight and even, so it is likely longer and steeper.`,
    )
  return notes
}

function elevationNote({ elevation, sums }: MeasuredTrack, formats: Formats): string {
  if (elevation === 'none') return 'No elevation in this file: climb and descent are left empty.'
  const how = `Climb is smoothed over ${formats.metres(SMOOTHING_KM * 1000)}; rises under ${formats.metres(THRESHOLD_M)} do not count.`
  if (elevation === 'all') return how
  return `Elevation is missing on ${formats.km(sums.unknownKm.at(-1) ?? 0)}: climb there is not counted. ${how}`
}

/** How the proposed places were found. */
export const splitNote = (formats: Formats): string =>
  `Waypoints within ${formats.metres(BESIDE_M)} of the track; days even in walking time; a night moves to a named one up to ${formats.km(SNAP_KM)} away. Water is only what you say it is.`
