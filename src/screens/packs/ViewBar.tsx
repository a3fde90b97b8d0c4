// "Sorted by …" and the filter in one line, and under it the filters that are on, as words that can be tapped away.

import type { ComponentChildren } from 'preact'
import { useRef, useState } from 'preact/hooks'
import { measureIn } from '../../report/compare-packs'
import { shelf } from '../../store'
import { counted } from '../../units'
import { FilterPanel } from './FilterPanel'
import { allShown, filterWords } from './filter-words'
import type { PackList } from './pack-list'
import { isOfATrip, look, ORDERS, type Order } from './view'

interface ViewBarProps {
  list: PackList
  isApart: boolean
  /** It is sorted by the heads of a table. */
  hasTable: boolean
  /** What else the line offers. */
  children?: ComponentChildren
}

export function ViewBar({ list, isApart, hasTable, children }: ViewBarProps) {
  const [open, setOpen] = useState(false)
  const { chosen, packs, rows } = list
  const words = filterWords(chosen)
  const opener = useRef<HTMLButtonElement>(null)
  // The word that was tapped goes, and the focus with it.
  const remove = (off: Parameters<typeof look>[0]) => {
    look(off)
    opener.current?.focus()
  }
  const isFiltered = rows.length < packs.length
  return (
    <div class="stack">
      <div class="view-line">
        {hasTable ? null : (
          <label class="sorted-by">
            <span>Sorted by</span>
            <select
              value={chosen.order}
              onChange={event => look({ order: event.currentTarget.value as Order })}
            >
              {ordersNow(isApart).map(({ value, label }) => (
                <option key={value} value={value}>
                  {label}
                </option>
              ))}
            </select>
          </label>
        )}
        <button ref={opener} type="button" class="link" aria-expanded={open} onClick={() => setOpen(!open)}>
          Filter
        </button>
        {children}
      </div>
      {open ? <FilterPanel {...{ list, isApart, hasTable }} /> : null}
      {words.length > 0 ? (
        <ul class="filter-words cluster" aria-label="Filters">
          {words.map(({ words, off }) => (
            <li key={words}>
              <button
                type="button"
                class="quiet"
                aria-label={`Remove the filter ${words}`}
                onClick={() => remove(off)}
              >
                {words} <span aria-hidden="true">×</span>
              </button>
            </li>
          ))}
          {words.length > 1 ? (
            <li>
              <button type="button" class="link" onClick={() => remove(allShown(chosen))}>
                Remove all
              </button>
            </li>
          ) : null}
        </ul>
      ) : null}
      <p class={isFiltered ? 'hint' : 'unseen'} role="status">
        {isFiltered ? `${rows.length} of ${counted(packs.length, 'pack')} shown` : ''}
        {isFiltered && rows.length === 0 ? ': tap a filter to remove it.' : ''}
      </p>
    </div>
  )
}

const ownName = () => shelf.value.figures?.measure?.name.trim() || ORDERS.own.toLowerCase()

/** The orders there are: one's own figure only once there is one, and by its name; apart from a trip none of its own. */
function ordersNow(isApart: boolean): { value: Order; label: string }[] {
  const hasOwn = measureIn(shelf.value.figures ?? {})
  return (Object.keys(ORDERS) as Order[])
    .filter(value => (value !== 'own' || hasOwn) && !(isApart && isOfATrip(value)))
    .map(value => ({ value, label: value === 'own' ? ownName() : ORDERS[value].toLowerCase() }))
}
