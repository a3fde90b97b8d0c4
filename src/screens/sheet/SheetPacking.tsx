// The packing list by place, with boxes to tick; a place's table repeats its head wherever it is continued.

import './packing.css'
import { useMemo } from 'preact/hooks'
import { type Item, itemName } from '../../plan'
import { type Formats, sharesByName } from '../../report'
import { type PackedPlace, type PackedRow, packedByPlace } from '../../report/packing-day'
import type { SheetParts } from './parts'
import { IN_SIGHT } from './rows'

type PackingParts = Omit<SheetParts, 'taken'>

export function SheetPacking({ plan, reckoning, formats, rows }: PackingParts) {
  const places = useMemo(() => packedByPlace(plan.gear), [plan.gear])
  if (places.length === 0) return null
  return (
    <section class="sheet-packing">
      <div class="set-out">
        <h3>To pack</h3>
        <SetOut plan={plan} reckoning={reckoning} formats={formats} rows={rows} />
      </div>
      <div class="places">
        {places.map(place => (
          <Place key={place.stow} place={place} formats={formats} most={rows} />
        ))}
      </div>
    </section>
  )
}

const USED_UP = ['water', 'food', 'fuel']

/** Food, fuel and water by what they weigh at the start and after each resupply: the list gives them by the day. */
function SetOut({ plan, reckoning: { moments }, formats, rows }: PackingParts) {
  const loads = moments.filter(
    ({ stop, phase }, i) => phase === 'depart' && (i === 0 || plan.trip.stops[stop]!.resupply),
  )
  return (
    <p class="small">
      {loads.slice(0, rows).map(moment => {
        const parts = sharesByName(moment.kg).filter(
          ({ name, amount }) => USED_UP.includes(name) && formats.kg(amount) !== formats.kg(0),
        )
        return (
          <span key={moment.stop}>
            Leaving <bdi>{plan.trip.stops[moment.stop]!.name}</bdi> with{' '}
            {parts.map(({ name, amount }) => `${name} ${formats.kg(amount)}`).join(', ') || 'gear only'}.{' '}
          </span>
        )
      })}
    </p>
  )
}

function Place({
  place: { title, rows },
  formats,
  most,
}: {
  place: PackedPlace
  formats: Formats
  most: number
}) {
  const kept = rows.filter(({ item }) => item.use === 'kept')
  const totalKg = kept.reduce((sum, { item }) => sum + item.count * item.massKg, 0)
  return (
    <table>
      <thead>
        <tr>
          <th scope="col">{title}</th>
          <th scope="col" class="number">
            <span class="unseen">Mass</span>
            {kept.length > 1 ? formats.kg(totalKg) : ''}
          </th>
        </tr>
      </thead>
      {startsIn(rows.slice(0, most)).map(from => (
        <Part key={from} rows={rows} from={from} formats={formats} />
      ))}
    </table>
  )
}

/** So many rows are laid out, and drawn anew, together. */
const PART = 100

const startsIn = (rows: PackedRow[]) => rows.flatMap((_, i) => (i % PART === 0 ? [i] : []))

/** A part of a place's rows: drawn once, whatever is drawn beside it. */
function Part({ rows, from, formats }: { rows: PackedRow[]; from: number; formats: Formats }) {
  return useMemo(
    () => (
      <tbody class={from < IN_SIGHT ? undefined : 'on-paper-only'}>
        {rows.slice(from, from + PART).map(({ item, within }) => (
          <tr key={item.id} class={within ? 'within' : undefined}>
            <th scope="row" class="name">
              <span class="box" aria-hidden="true" />
              {within ? <span class="unseen">inside it: </span> : null}
              <bdi>{itemName(item)}</bdi>
              {item.count > 1 ? ` × ${item.count}` : ''}
            </th>
            <td class="number">{massText(item, formats)}</td>
          </tr>
        ))}
      </tbody>
    ),
    [rows, from, formats],
  )
}

const PER = { kept: '', daily: ' a day', nightly: ' a night', spread: '' } as const

const massText = ({ count, massKg, use }: Item, formats: Formats) => formats.gear(count * massKg) + PER[use]
