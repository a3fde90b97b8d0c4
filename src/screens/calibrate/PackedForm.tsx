// "I packed this list in that pack": which pack, when, how full; what it says of the packing, and one tap to keep it.

import { useEffect, useMemo, useRef, useState } from 'preact/hooks'
import { Choice, LooseField, SelectOne, useFormats, useSystem } from '../../components/fields'
import { type BodyFrom, type Plan, tripName } from '../../plan'

import { effectText, listOnShelf, oddText, packedSeen, reckonedList } from '../../report/confidence'
import { actions, library, openTrip, shelf } from '../../store'
import { bareUnitOf } from '../../units'
import { keepPacking } from './edit-packings'
import { ASKED, type FormText, fromDetail, readField, readSaid, toDetail } from './form-text'

/** Kept while the app is open: what was typed before a look elsewhere. */
let left: string | null = null

const HOW = [
  { value: 'full', label: 'Closed' },
  { value: 'over', label: 'Would not close' },
  { value: 'box', label: 'In a carton' },
] as const
const WHEN = [
  { value: 'start', label: 'With food and water' },
  { value: 'bare', label: 'Without them' },
] as const
const FULL = [
  { value: '50 %', label: 'Half' },
  { value: '75 %', label: 'Three quarters' },
  { value: '100 %', label: 'To the brim' },
]

interface PackedProps {
  plan: Plan
  packIds: readonly string[]
  /** The place of the pack that the trip takes; null: none is taken. */
  taken: number | null
}

export function PackedForm({ plan, packIds, taken }: PackedProps) {
  const system = useSystem()
  const { place } = library.value
  // How many there were when one was added from here, so that the word on it goes with it.
  const [added, setAdded] = useState<number | null>(null)
  const status = useRef<HTMLParagraphElement>(null)
  // The button that was tapped is gone with what was typed.
  useEffect(() => {
    if (added !== null) status.current?.focus()
  }, [added])
  const form = fromDetail(
    place.screen === 'calibrate' ? (place.detail ?? left) : left,
    openTrip.value?.id ?? '',
  )
  const packs = plan.packs.map((pack, i) => ({ id: packIds[i]!, ...pack }))
  // The pack that is taken is the likeliest, else the first, until another is chosen.
  const likely = packs[taken ?? 0]
  const pack = form.pack === 'other' ? undefined : (packs.find(({ id }) => id === form.pack) ?? likely)
  const list = useMemo(() => reckonedList(plan, form.when), [plan, form.when])
  const set = (part: Partial<FormText>) => {
    left = toDetail({ ...form, ...part })
    actions.setPlace({ screen: 'calibrate', detail: left, scrollY })
  }
  const field = (key: keyof typeof ASKED, hint?: string) => (
    <LooseField
      label={ASKED[key].label}
      unit={bareUnitOf(ASKED[key].kind, system)}
      text={form[key]}
      reading={readField(form, key, system)}
      hint={hint}
      onText={text => set({ [key]: text })}
    />
  )
  const said = readSaid({ ...form, pack: pack?.id ?? '' }, { packLitres: pack?.bodyLitres, system })
  return (
    <section aria-labelledby="packed">
      <h3 id="packed">
        Packed <bdi>{openTrip.value?.draft.name || 'this list'}</bdi>
      </h3>
      <Choice label="It was packed" options={WHEN} chosen={form.when} onChoose={when => set({ when })} />
      <p class="hint">
        {form.when === 'start'
          ? 'As at the first stop, with the food and water the plan has then.'
          : 'Everything of the list but food and water; bottles and food boxes empty.'}
      </p>
      <Choice label="The pack" options={HOW} chosen={form.how} onChoose={how => set({ how })} />
      {form.how === 'box' ? (
        <>
          <p class="hint">
            Lay everything that goes in the main body in a carton, press it as in the pack, and read how high
            it stands. This is the surest way: no pack’s stated litres come into it.
          </p>
          <div class="fields">
            {field('length')}
            {field('width')}
            {field('height')}
          </div>
        </>
      ) : (
        <>
          <PackChoice packs={packs} chosen={pack?.id ?? 'other'} onChoose={id => set({ pack: id })} />
          {pack ? null : <div class="fields">{field('body', 'Without the collar.')}</div>}
          {form.how === 'full' ? (
            <>
              <Choice
                label="How full was its main body, pressed down as for the trail?"
                options={FULL}
                chosen={form.full}
                onChoose={full => set({ full })}
              />
              <div class="fields">{field('full')}</div>
              <p class="hint">
                A pack nearly full tells most: what lies loose in a half-empty one reads as too much.
              </p>
            </>
          ) : (
            <div class="fields">{field('over', 'What stayed out, or rode in the collar.')}</div>
          )}
        </>
      )}
      {said && list ? (
        <Seen {...said} list={list} gear={gearName(form.when)} pack={pack} onKept={clear} />
      ) : null}
      <p ref={status} tabIndex={-1} role="status">
        {added === shelf.value.packings.length ? 'Added. This trip uses it now.' : ''}
      </p>
    </section>
  )

  function clear() {
    setAdded(shelf.value.packings.length)
    set({ full: '', over: '', height: '' })
  }
}

const gearName = (when: FormText['when']) =>
  `${tripName(openTrip.value?.draft ?? {})}${when === 'bare' ? ', without food and water' : ''}`

interface PackChoiceProps {
  packs: { id: string; name: string; bodyLitres: number }[]
  chosen: string
  onChoose: (id: string) => void
}

function PackChoice({ packs, chosen, onChoose }: PackChoiceProps) {
  const formats = useFormats()
  if (packs.length === 0) return null
  return (
    <SelectOne
      label="Which pack"
      options={[
        ...packs.map(({ id, name, bodyLitres }) => ({
          value: id,
          label: `${name}, ${formats.litres(bodyLitres)}`,
        })),
        { value: 'other', label: 'Another pack' },
      ]}
      chosen={chosen}
      onChoose={onChoose}
    />
  )
}

type SeenProps = NonNullable<ReturnType<typeof readSaid>> & {
  list: NonNullable<ReturnType<typeof reckonedList>>
  gear: string
  pack: { name: string; bodyFrom: BodyFrom } | undefined
  onKept: () => void
}

/** What the packing says, before it is kept. */
function Seen({ said, bodyLitres, list, gear, pack, onKept }: SeenProps) {
  const formats = useFormats()
  const seen = packedSeen({ said, bodyLitres, W: list.W })
  if (!seen.ok) return <p class="problem">{seen.message}</p>
  const { factor } = seen
  const odd = oddText(
    factor,
    shelf.value.packings.map(other => other.factor),
  )
  const isBox = said.how === 'box'
  const keep = () => {
    keepPacking({
      at: Date.now(),
      gear,
      pack: isBox ? 'a carton' : (pack?.name ?? 'another pack'),
      bodyLitres: seen.bodyLitres,
      said,
      reckonedLitresAtFactor1: list.W,
      factor,
      list: {
        ...listOnShelf(list, openTrip.value?.draft ?? { gear: [] }),
        packFrom: isBox ? 'measured' : (pack?.bodyFrom ?? 'stated'),
      },
    })
    onKept()
  }
  return (
    <div class="seen">
      <p>
        It took {formats.litres(factor * list.W)}; the general model says {formats.litres(list.W)}. Your
        packing takes <strong>{effectText(factor)}</strong>: factor {factor.toFixed(2)}.
      </p>
      {odd ? <p class="odd">{odd}</p> : null}
      <button type="button" class="primary" onClick={keep}>
        Add this packing
      </button>
    </div>
  )
}
