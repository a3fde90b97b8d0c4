// The list to tick, part by part, with how far one is.

import { useMemo } from 'preact/hooks'
import { usePortions } from '../../components/long-list'
import { Tick } from '../../components/pieces'
import { Why } from '../../components/why'
import { isMarked, itemName, mark, type Plan } from '../../plan'
import type { Reckoning } from '../../reckon'
import type { Formats } from '../../report'
import { amountsToPack, type PackingPart } from '../../report/packing-day'
import { actions, openTrip } from '../../store'

interface PackListProps {
  parts: PackingPart[]
  plan: Plan
  reckoning: Reckoning | null
  formats: Formats
}

/** So many rows are drawn at once. */
const AT_ONCE = 150

export function PackList({ parts, plan, reckoning, formats }: PackListProps) {
  const packed = openTrip.value?.draft.log?.packed
  const all = parts.flatMap(({ rows }) => rows)
  const done = all.filter(({ item }) => isMarked(packed, item.id)).length
  const { drawn, more } = usePortions(all.length, 'items', AT_ONCE)
  const amounts = useMemo(
    () => (reckoning ? amountsToPack(plan, reckoning, formats) : new Map<string, string>()),
    [plan, reckoning, formats],
  )
  const start = reckoning ? reckoning.moments[0]!.kg : null
  const water = formats.water(start?.water ?? 0)
  const leaves = water !== formats.water(0)
  let left = drawn
  return (
    <div class="pack-list" data-figures="why">
      <div class="pack-progress">
        <p role="status">
          <strong>
            {done} of {all.length}
          </strong>{' '}
          packed
        </p>
        <progress aria-hidden="true" max={all.length} value={done} />
      </div>
      {parts.map(({ title, rows }) => {
        const shown = rows.slice(0, Math.max(0, left))
        left -= rows.length
        if (shown.length === 0) return null
        return (
          <section key={title} aria-label={title}>
            <h3>{title}</h3>
            <ul class="ticks">
              {shown.map(({ item, within }) => (
                <Tick
                  key={item.id}
                  within={within}
                  isOn={isMarked(packed, item.id)}
                  onTick={isOn => tick(item.id, itemName(item), isOn)}
                >
                  {within ? <span class="unseen">inside it: </span> : null}
                  <bdi class="name">{itemName(item)}</bdi>
                  {item.count > 1 ? ` × ${item.count}` : ''}{' '}
                  <span class="facts-line">{amounts.get(item.id) ?? ''}</span>
                </Tick>
              ))}
            </ul>
          </section>
        )
      })}
      {more}
      {leaves ? <p>Water to leave with: {water}.</p> : null}
      {amounts.size > 0 || leaves ? (
        <Why
          about={{
            kind: 'noted',
            title: 'How much to pack',
            says: 'For the start, as the trip is planned: food and fuel until they are bought again or the trip ends, with the spare days, and the water to leave with.',
            lines: [
              ...plan.gear.flatMap(item => {
                const value = amounts.get(item.id)
                return value ? [{ label: itemName(item), value }] : []
              }),
              ...(leaves ? [{ label: 'Water to leave with', value: water }] : []),
              ...(start
                ? [{ label: 'Together', value: formats.kg(start.daily + start.nightly + start.water) }]
                : []),
            ],
          }}
          figure="How much to pack"
        />
      ) : null}
      <p class="hint">The order is our judgement: heavy for its size rides close to the back.</p>
    </div>
  )
}

const tick = (id: string, name: string, isOn: boolean) =>
  actions.edit(`${isOn ? 'Pack' : 'Unpack'} ${name}`, draft => mark(draft, 'packed', id, isOn))
