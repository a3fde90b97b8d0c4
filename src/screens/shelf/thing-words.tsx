// A thing in a line or two: what it weighs and takes, what is noted of it, and where it is used.

import { itemFacts } from '../../components/item-words'
import { dayText } from '../../components/pieces'
import type { Thing } from '../../plan/shelf'
import { counted, listText, type System } from '../../units'

export const nameOf = ({ item }: Thing): string => item.name || 'Without a name'

interface ThingLinesProps {
  thing: Thing
  system: System
  uses: number
  isInTrip: boolean
}

export function ThingLines({ thing, system, uses, isInTrip }: ThingLinesProps) {
  const { item, note, weighedOn, retired } = thing
  const { count = 1 } = item
  const facts = [...itemFacts(item, system), weighedOn ? `weighed ${dayText(weighedOn)}` : '']
  // The open trip by its name, the others by how many there are.
  const others = isInTrip ? uses - 1 : uses
  const trips = [isInTrip ? 'this trip' : '', others > 0 ? counted(others, isInTrip ? 'other' : 'trip') : '']
  const inTrips = listText(trips.filter(Boolean))
  const state = [retired ? 'Retired' : '', inTrips && `In ${inTrips}`].filter(Boolean)
  return (
    <>
      <bdi class="name">
        {count === 1 ? '' : `${count} × `}
        {nameOf(thing)}
      </bdi>
      <span class="facts-line" data-figures="typed">
        {facts.filter(Boolean).join(', ')}
      </span>
      {note ? <span class="facts-line thing-note">{note}</span> : null}
      {state.length > 0 ? <span class="facts-line thing-state">{state.join(', ')}</span> : null}
    </>
  )
}
