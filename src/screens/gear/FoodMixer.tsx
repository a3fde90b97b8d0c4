// A day's food from its parts: foods and masses in; kilograms, energy and litres a day out, written as one daily item.
// Loaded when it is opened. The mix stays, for this trip, until it is emptied.

import { useEffect, useRef, useState } from 'preact/hooks'
import { LooseField, type Reading, readQuantity, useSystem } from '../../components/fields'
import { daysFood, FOOD_PACKING, type Food, foods, foodWithId, withoutDensity } from '../../plan/foods'
import { bareUnitOf } from '../../units'
import { FoodTotals } from './FoodTotals'
import { useKept } from './kept'
import './gear.css'

const SHOWN_FOODS = 6
const LIMIT = { min: 0, max: 5, unit: 'kg' }

interface Entry {
  id: string
  text: string
}

export function FoodMixer() {
  const [kept, keep] = useKept('food')
  const entries = entriesOf(kept)
  const system = useSystem()
  const [sought, setSought] = useState('')
  const mixer = useRef<HTMLElement>(null)
  // What is tapped goes away: the focus goes on to the amount of the new food, or back to the search.
  const [next, setNext] = useState<string | null>(null)
  useEffect(() => {
    if (next !== null) mixer.current?.querySelector<HTMLElement>(next)?.focus()
    setNext(null)
  }, [next])
  const change = (next: Entry[]) => keep(next.length ? JSON.stringify(next) : '')

  const rows = entries.flatMap(({ id, text }) => {
    const food = foodWithId(id)
    if (!food) return []
    return [
      {
        food,
        text,
        reading: readQuantity(text, { kind: 'mass', label: food.name, limit: LIMIT, system, fine: true }),
      },
    ]
  })
  const portions = rows.map(({ food, reading }) => ({ food, massKg: massOf(reading) }))
  const day = daysFood(portions)
  const words = sought.toLowerCase().split(/\s+/).filter(Boolean)
  const matching = words.length
    ? foods.filter(
        food =>
          words.every(word => food.name.toLowerCase().includes(word.replace(/s$/, ''))) &&
          !entries.some(({ id }) => id === food.id),
      )
    : []

  return (
    <section ref={mixer} class="mixer" aria-label="A day’s food">
      <h3>A day’s food</h3>
      <div class="field">
        <label for="find-food">Find a food</label>
        <input
          id="find-food"
          type="text"
          autocomplete="off"
          placeholder="oats, nuts, cheese …"
          value={sought}
          onInput={event => setSought(event.currentTarget.value)}
        />
      </div>
      <ul class="kinds" data-figures="cited" aria-label="Foods found">
        {matching.slice(0, SHOWN_FOODS).map(food => (
          <li key={food.id}>
            <button
              type="button"
              class="quiet kind"
              onClick={() => {
                change([...entries, { id: food.id, text: '' }])
                setSought('')
                setNext(`[data-food="${food.id}"] input`)
              }}
            >
              <span class="name">{food.name}</span>
              <span class="facts-line">{factsOf(food)}</span>
            </button>
          </li>
        ))}
      </ul>
      <p role="status" class="hint">
        {words.length === 0
          ? ''
          : matching.length === 0
            ? 'No food of that name in the table.'
            : matching.length > SHOWN_FOODS
              ? `And ${matching.length - SHOWN_FOODS} more: write on to narrow them down.`
              : ''}
      </p>
      {rows.map(({ food, text, reading }) => (
        <div key={food.id} class="portion" data-food={food.id}>
          <LooseField
            label={food.name}
            unit={`${bareUnitOf('mass', system, true)} a day`}
            text={text}
            reading={reading}
            hint={factsOf(food)}
            onText={typed =>
              change(entries.map(entry => (entry.id === food.id ? { ...entry, text: typed } : entry)))
            }
          />
          <button
            type="button"
            class="quiet"
            aria-label={`Leave out ${food.name}`}
            onClick={() => {
              change(entries.filter(entry => entry.id !== food.id))
              setNext('#find-food')
            }}
          >
            Leave out
          </button>
        </div>
      ))}
      {day ? <FoodTotals day={day} portions={portions} /> : null}
      <p class="hint" data-figures="cited">
        Litres are mass by density, times {FOOD_PACKING} for bags that do not lie close (our judgement).
        Densities and energy: USDA food database (public domain), or our estimate where marked. For loose food
        sources differ by 15 to 30 %. {withoutDensity} foods without a known density are left out.
      </p>
    </section>
  )
}

const massOf = (reading: Reading) => ('value' in reading ? (reading.value ?? 0) : 0)

const factsOf = ({ kcalPer100G, kgPerLitre, source }: Food) =>
  `${kcalPer100G} kcal/100 g, ${kgPerLitre} kg/L${source === 'ours' ? ' (our estimate)' : ''}`

/** The kept mix; one that cannot be read counts as empty. */
function entriesOf(kept: string): Entry[] {
  if (!kept) return []
  try {
    const read: unknown = JSON.parse(kept)
    return Array.isArray(read) ? read.filter(isEntry) : []
  } catch {
    return []
  }
}

const isEntry = (value: unknown): value is Entry =>
  typeof (value as Entry | null)?.id === 'string' && typeof (value as Entry).text === 'string'
