// The demo trip with its packs changed, open in the store: what the tests of choosing start from.

import demo from '../../data/demo-plan.json'
import { type Draft, fromPlanDocument, parsePlan } from '../../src/plan'
import { actions, newId, openTrip, reckoned } from '../../src/store'

export function demoDraft(): Draft {
  const parsed = parsePlan(demo)
  if (!parsed.ok) throw new Error('the demo plan is refused')
  return fromPlanDocument(parsed.document, newId)
}

/** The demo with one framed pack of so many litres and such a rating. */
export function withOnePack(bodyLitres: number, ratedKg: number): Draft {
  return {
    ...demoDraft(),
    packs: [
      {
        id: 'p',
        name: 'The one',
        bodyLitres,
        outsideLitres: 8,
        setups: [{ id: 's', name: 'as it is', massKg: 0.9, ratedKg, frame: 'framed' }],
      },
    ],
  }
}

export function openDraft(draft: Draft, { isDemo = false } = {}) {
  actions.setSystem('metric')
  actions.createTrip(draft, { demo: isDemo })
  actions.setPlace({ screen: 'packs', detail: null, scrollY: 0 })
}

/** The open trip as the engine sees it. */
export function judged() {
  const open = reckoned.value
  if (!open?.reckoned.ok) throw new Error('the trip does not settle')
  return { plan: open.plan, packIds: open.packIds, reckoning: open.reckoned.reckoning }
}

export const draft = () => openTrip.value!.draft

/** The place of the page of one pack of the open trip: the first, unless told otherwise. */
export const pageOf = (index = 0) => ({ detail: `packs/${draft().packs[index]!.id}` })

/** The words of each row, as they are heard. */
export const rowWords = () =>
  [...document.querySelectorAll('.row-says')].map(says => plain(says.textContent ?? ''))

/** A text as the queries see it: with plain spaces. */
export const plain = (text: string) => text.replace(/\s/g, ' ')
