// The search over the shelf, its order, and whether retired things are shown.

import type { ComponentChildren } from 'preact'
import { useState } from 'preact/hooks'
import { shelf } from '../../store'
import { counted } from '../../units'
import { look, ORDERS, type Order, view } from './view'

interface ViewBarProps {
  /** How many are on show. */
  shown: number
  /** What the bar ends with. */
  children: ComponentChildren
}

export function ViewBar({ shown, children }: ViewBarProps) {
  const { sought, order, withRetired } = view.value
  const [open, setOpen] = useState(false)
  const { things } = shelf.value
  const retired = things.filter(thing => thing.retired).length
  const all = withRetired ? things.length : things.length - retired
  return (
    <>
      <div class="view-bar">
        {/* Clearing lies in the field, so that the row stays as it is while one types. */}
        <div class="sought">
          <input
            type="text"
            inputMode="search"
            autocomplete="off"
            aria-label="Search names, groups and notes"
            placeholder="Search"
            value={sought}
            onInput={event => look({ sought: event.currentTarget.value })}
          />
          {sought ? (
            <button
              type="button"
              class="quiet"
              aria-label="Clear"
              onClick={event => {
                look({ sought: '' })
                event.currentTarget.parentElement?.querySelector('input')?.focus()
              }}
            >
              ×
            </button>
          ) : null}
        </div>
        <button type="button" class="quiet" aria-expanded={open} onClick={() => setOpen(!open)}>
          Sort
        </button>
        {children}
      </div>
      {open ? (
        <div class="view-choices">
          <select
            aria-label="Order"
            value={order}
            onChange={event => look({ order: event.currentTarget.value as Order })}
          >
            {ORDERS.map(({ value, label }) => (
              <option key={value} value={value}>
                {label}
              </option>
            ))}
          </select>
          {retired > 0 ? (
            <label class="toggle">
              <input
                type="checkbox"
                checked={withRetired}
                onChange={event => look({ withRetired: event.currentTarget.checked })}
              />
              <span>Show {retired} retired</span>
            </label>
          ) : null}
        </div>
      ) : null}
      <p class={shown === all ? 'unseen' : 'hint'} role="status">
        {shown === all ? counted(all, 'item') : `${shown} of ${counted(all, 'item')}`}
      </p>
    </>
  )
}
