// At the shop: what to ask for, and a tag checked as it is typed, with one thumb and no network.

import { useMemo } from 'preact/hooks'
import { Choice, useSystem } from '../../components/fields'
import { AskedCard, Warnings } from '../../components/judged'
import { FIT_LINE, formatsIn, shortCautions, takesNothing } from '../../report'
import { type AllTrips, askedBy } from '../../report/compare-packs'
import { actions, library, openTrip, reckoned, tripList } from '../../store'
import { MOST_COMPARED, tripsToCompare, useAllTrips } from '../trips'
import { answerLine, Judgement, judgedFor } from './Judgement'
import { Keep } from './Keep'
import './shop.css'
import { toTop } from '../../components/frame'
import { MoreTagFields, TagFields } from './TagFields'
import { fromDetail, readTag, type TagText, toDetail } from './tag-text'

/** Kept while the app is open: which trips the pack is for, and what was typed before a look elsewhere. */
let scope: 'this' | 'all' = 'this'
let left: string | null = null

type Asking = Pick<AllTrips, 'asked' | 'plans' | 'names'>
const NOT_YET: Asking = { asked: () => null, plans: [], names: [] }

const stay = (detail: string | null) => actions.setPlace({ screen: 'shop', detail, scrollY })

export function ShopScreen() {
  const system = useSystem()
  const formats = formatsIn(system)
  const { place } = library.value
  const text = fromDetail(place.screen === 'shop' ? (place.detail ?? left) : left)
  const read = readTag(text, system)
  const trips = useMemo(() => tripsToCompare(tripList.value), [tripList.value])
  const several = trips.length > 1
  const all = several && scope === 'all'
  const open = reckoned.value
  const judgedTrips = useAllTrips(all ? trips : null, formats)

  const set = (part: Partial<TagText>) => {
    left = toDetail({ ...text, ...part })
    stay(left)
  }
  const choose = (next: typeof scope) => {
    scope = next
    stay(toDetail(text))
  }
  const { asked: askedOf, plans, names } = judgedTrips ?? (all ? NOT_YET : ofOpen())
  const asked = askedOf(read.tag.massKg)
  const judged = judgedFor(read.tag, { plans, names }, formats)
  return (
    <div class="screen shop">
      <div class="heading">
        <h2>At the shop</h2>
        <button type="button" class="quiet" onClick={() => toTop('packs')}>
          Back to packs
        </button>
      </div>
      {several ? (
        <Choice
          label="A pack for"
          options={[
            { value: 'this', label: 'This trip' },
            {
              value: 'all',
              label: tripList.value.length <= MOST_COMPARED ? 'All my trips' : `${trips.length} of my trips`,
            },
          ]}
          chosen={scope}
          onChoose={choose}
        />
      ) : null}
      <section aria-labelledby="shop-asked">
        <h3 id="shop-asked">What to ask for</h3>
        {asked ? (
          <AskedCard
            asked={asked}
            trips={plans.map((plan, i) => ({ name: names[i]!, plan }))}
            formats={formats}
          />
        ) : (
          <p>{whyNothing()}</p>
        )}
        {open?.reckoned.ok && !all ? (
          <Warnings cautions={shortCautions(open.plan, open.reckoned.reckoning, formats)} />
        ) : null}
      </section>
      <section aria-labelledby="shop-tag">
        <div class="tag-head">
          <h3 id="shop-tag">Check a tag</h3>
          <p class="tag-answer" aria-live="polite">
            {answerLine(judged)}
          </p>
        </div>
        <TagFields text={text} read={read} system={system} onText={set} />
        <Judgement judged={judged} />
        <p class="hint">{FIT_LINE}</p>
        <MoreTagFields text={text} read={read} system={system} onText={set} />
        <Keep
          tag={read.tag}
          known={judged.length > 0}
          onKept={() => {
            left = null
            stay(null)
          }}
        />
      </section>
    </div>
  )

  function whyNothing(): string {
    if (all ? !judgedTrips : !open) return 'Working it out…'
    if (all || (open && takesNothing(open.plan))) return 'No gear yet: add what you carry first.'
    return 'The food has too little energy for its mass; change it under Food.'
  }

  function ofOpen(): Asking {
    if (!open?.reckoned.ok || takesNothing(open.plan)) return NOT_YET
    const { plan } = open
    const { reckoning } = open.reckoned
    return {
      asked: packKg => askedBy([{ plan, reckoning }], packKg),
      plans: [plan],
      names: [openTrip.value?.draft.name || 'this trip'],
    }
  }
}
