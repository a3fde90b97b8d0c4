// Who carries what: shared out as fairly as can be, told why it is fair, and changed by hand where one knows better.

import { Field, useFormats } from '../../components/fields'
import { toTop } from '../../components/frame'
import { Cautions, WhenOpen } from '../../components/pieces'
import { type Draft, personName } from '../../plan'
import type { PartyReckoning } from '../../reckon'
import { GENERAL_LINE } from '../../report'
import { partyTold } from '../../report/party'
import { actions, type OpenParty, openTrip, reckoned } from '../../store'
import { Carries } from './Carries'
import { MakeParty } from './MakeParty'
import { Owners } from './Owners'
import './party.css'
import { useLoadChanges } from './use-load-changes'
import { proofOf, type Sharing, useSharing } from './use-sharing'

export function SplitScreen() {
  const draft = openTrip.value?.draft
  const open = reckoned.value
  const sharing = useSharing()
  return (
    <div class="screen split">
      <div class="heading">
        <h2>Who carries what</h2>
        <button type="button" class="quiet" aria-label="Back to gear" onClick={() => toTop('gear')}>
          Back
        </button>
      </div>
      {!draft || !open ? (
        <p class="hint loading">Working it out…</p>
      ) : !open.party ? (
        <MakeParty />
      ) : open.party.reckoning ? (
        <Shared draft={draft} party={open.party} reckoning={open.party.reckoning} sharing={sharing} />
      ) : (
        <p class="problem">
          {open.reckoned.ok
            ? 'Somebody’s food gives too little energy for its mass.'
            : open.reckoned.problem.said}
        </p>
      )}
    </div>
  )
}

interface SharedProps {
  draft: Draft
  party: OpenParty
  reckoning: PartyReckoning
  sharing: Sharing
}

function Shared({ draft, party, reckoning, sharing }: SharedProps) {
  const formats = useFormats()
  const { plan, withoutMass } = party
  const proof = proofOf(party)
  const told = partyTold({ plan, party: reckoning, withoutMass, proof }, formats)
  const changes = useLoadChanges(reckoning, formats)
  const isNew = draft.shared === undefined
  if (plan.gear.every(({ atHome }) => atHome))
    return (
      <>
        <p>Nothing to carry yet.</p>
        <button type="button" onClick={() => toTop('gear')}>
          Add gear
        </button>
      </>
    )
  return (
    <>
      <div class="stack" data-figures="door">
        {told.young.map(line => (
          <p key={line} class="lead">
            {line}
          </p>
        ))}
        {told.unknown.map(line => (
          <p key={line}>
            {line}{' '}
            <button type="button" class="quiet" onClick={() => toTop('trip')}>
              Give it
            </button>
          </p>
        ))}
        {told.bottles === null ? null : (
          <p>
            {told.bottles}{' '}
            <button type="button" class="quiet" onClick={() => toTop('gear')}>
              Open the gear
            </button>
          </p>
        )}
        {told.fair.map(line => (
          <p key={line}>{line}</p>
        ))}
        {proof ? null : (
          <p class="hint">
            {isNew
              ? 'Nothing is shared out yet: what is everybody’s is counted with the first person.'
              : 'Carried as below. Share out again to see whether it can be fairer.'}
          </p>
        )}
      </div>
      <Start {...{ sharing, isNew, isProven: proof !== null }} onStart={() => sharing.start(plan)} />
      {told.people.map(({ id, name, load }) => (
        <section key={id} class="carrier" data-figures="door">
          <h3>
            <button
              type="button"
              class="link"
              aria-label={`${name}, open the need`}
              onClick={() => {
                actions.setPerson(id)
                toTop('need')
              }}
            >
              {name}
            </button>
          </h3>
          <p role="status">
            {load}
            {changes.get(id) ? <strong> ({changes.get(id)})</strong> : null}
          </p>
          <Carries draft={draft} party={party} who={id} />
        </section>
      ))}
      <Field
        path="split/by"
        usual="limit"
        options={[
          { value: 'limit', label: 'The same share of each one’s limit' },
          { value: 'mass', label: 'The same mass for each' },
          ...plan.people.map(({ id }) => ({
            value: id,
            label: `As little as possible for ${personName(draft, id)}`,
          })),
        ]}
      />
      <Owners draft={draft} />
      <Cautions cautions={told.cautions.first} />
      <WhenOpen class="more section" summary={`Safety notes (${told.cautions.others.length + 1})`}>
        {() => (
          <>
            <Cautions cautions={told.cautions.others} />
            <p class="hint">{GENERAL_LINE}</p>
          </>
        )}
      </WhenOpen>
    </>
  )
}

interface StartProps {
  sharing: Sharing
  isNew: boolean
  isProven: boolean
  onStart: () => void
}

function Start({ sharing, isNew, isProven, onStart }: StartProps) {
  return (
    <div class="actions" role="status">
      {sharing.isRunning ? (
        <>
          <progress aria-label="Sharing out" />
          <button type="button" onClick={sharing.cancel}>
            Cancel
          </button>
        </>
      ) : (
        <button type="button" class={isProven ? 'quiet' : 'primary'} onClick={onStart}>
          {isNew ? 'Share out' : 'Share out again'}
        </button>
      )}
      {sharing.said ? <p>{sharing.said}</p> : null}
    </div>
  )
}
