// "Sort and filter": one tap away, so that the packs themselves come first.

import { useId } from 'preact/hooks'
import { Choice, LooseField, type Reading } from '../../components/fields'
import { ANSWERS } from '../../report'
import { measureIn } from '../../report/compare-packs'
import { shelf } from '../../store'
import type { System } from '../../units'
import { AS_LISTED, ORDERS, type Order, OWN, view } from './view'

interface ViewChoicesProps {
  shown: number
  all: number
  /** All there are. */
  tags: readonly string[]
  system: System
  price: Reading
  mass: Reading
}

export function ViewChoices({ shown, all, tags, system, price, mass }: ViewChoicesProps) {
  const id = useId()
  const chosen = view.value
  const set = (part: Partial<typeof chosen>) => {
    view.value = { ...chosen, ...part }
  }
  const words = wordsOf(chosen)
  return (
    <>
      <details class="more">
        <summary>
          Sort and filter{words.length ? <span class="hint">: {words.join(', ')}</span> : null}
        </summary>
        <div class="view-choices">
          <div class="field">
            <label for={id}>Order</label>
            <select
              id={id}
              value={chosen.order}
              onChange={event => set({ order: event.currentTarget.value as Order })}
            >
              {Object.entries(ordersNow()).map(([value, label]) => (
                <option key={value} value={value}>
                  {label}
                </option>
              ))}
            </select>
          </div>
          <Choice
            label="Frame"
            options={[
              { value: 'any', label: 'Any' },
              { value: 'framed', label: 'With' },
              { value: 'frameless', label: 'Without' },
            ]}
            chosen={chosen.frame}
            onChoose={frame => set({ frame })}
          />
          <Choice
            label="Whose"
            options={(Object.keys(OWN) as (keyof typeof OWN)[]).map(value => ({ value, label: OWN[value] }))}
            chosen={chosen.own}
            onChoose={own => set({ own })}
          />
          {tags.length > 0 ? (
            <Choice
              label="Tag"
              options={['', ...tags].map(tag => ({ value: tag, label: tag || 'Any' }))}
              chosen={chosen.tag ?? ''}
              onChoose={tag => set({ tag: tag || null })}
            />
          ) : null}
          <label class="toggle">
            <input
              type="checkbox"
              checked={chosen.sealed}
              onChange={event => set({ sealed: event.currentTarget.checked })}
            />
            <span>Sealed seams only</span>
          </label>
          <div class="fields">
            <LooseField
              label="Price up to"
              text={chosen.priceText}
              reading={price}
              onText={priceText => set({ priceText })}
            />
            <LooseField
              label="Pack mass up to"
              unit={system === 'us' ? 'oz' : 'g'}
              text={chosen.massText}
              reading={mass}
              onText={massText => set({ massText })}
            />
          </div>
        </div>
      </details>
      {shown < all ? (
        <p role="status">
          {shown} of {all} packs shown. A pack whose price or mass is not known is left out where you ask for
          it.
        </p>
      ) : null}
      {words.length ? (
        <button
          type="button"
          class="quiet"
          onClick={() => {
            view.value = AS_LISTED
          }}
        >
          All packs, as listed
        </button>
      ) : null}
    </>
  )
}

const ownName = () => shelf.value.figures?.measure?.name.trim() || ORDERS.own.toLowerCase()

/** The orders there are: one's own figure only once there is one, and by its name. */
function ordersNow(): Partial<Record<Order, string>> {
  const { own: _own, ...others } = ORDERS
  return measureIn(shelf.value.figures ?? {}) ? { ...others, own: ownName() } : others
}

function wordsOf({
  order,
  answer,
  frame,
  sealed,
  own,
  tag,
  priceText,
  massText,
}: typeof AS_LISTED): string[] {
  return [
    answer === null ? '' : ANSWERS[answer].words.toLowerCase(),
    order === 'listed' ? '' : order === 'own' ? ownName() : ORDERS[order].toLowerCase(),
    frame === 'any' ? '' : frame === 'framed' ? 'with a frame' : 'without a frame',
    sealed ? 'sealed' : '',
    own === 'any' ? '' : OWN[own].toLowerCase(),
    tag === null ? '' : `“${tag}”`,
    priceText.trim() ? `price up to ${priceText.trim()}` : '',
    massText.trim() ? `mass up to ${massText.trim()}` : '',
  ].filter(Boolean)
}
