// The open trip as a link or a code, after saying what is in it.

import './share.css'
import { useEffect, useMemo, useState } from 'preact/hooks'
import { useSystem } from '../../components/fields'
import { later } from '../../components/frame'
import { SHARE_CAPS, type SharedLink, shareLink, withoutCarrier } from '../../files/share'
import { completePlan, type PlanDocument } from '../../plan'
import { type Formats, formatsIn } from '../../report'
import { reckoned } from '../../store'

const CodePicture = later(async () => (await import('./CodePicture')).CodePicture)

export function SharePlan() {
  const document = reckoned.value?.document
  return document ? <Share document={document} /> : null
}

function Share({ document }: { document: PlanDocument }) {
  const [leaveOut, setLeaveOut] = useState(true)
  const shared = useMemo(() => (leaveOut ? withoutCarrier(document) : document), [document, leaveOut])
  const made = useLinkOf(shared)
  const formats = formatsIn(useSystem())
  return (
    <section>
      <h2>Share this trip</h2>
      <p>
        A link carries the whole plan in itself: stops, gear, packs, settings and all names. No server gets to
        see it; whoever has the link can read it.
      </p>
      <label class="toggle">
        <input
          type="checkbox"
          checked={leaveOut}
          onChange={event => setLeaveOut(event.currentTarget.checked)}
        />
        <span>Leave out body mass, height, age and sex</span>
      </label>
      <p class="hint" data-figures="typed">
        {personWords(shared, leaveOut, formats)}
      </p>
      {made?.ok === false ? <p class="problem">{made.message}</p> : null}
      {made?.ok === false ? null : (
        <Ways key={made?.link} link={made?.link ?? null} name={document.name ?? ''} />
      )}
    </section>
  )
}

/** What the link tells of the person. */
function personWords(document: PlanDocument, leftOut: boolean, { kg, cm, percent }: Formats): string {
  const { massKg, heightCm, ageYears, sex, loadShareLimit } = completePlan(document).carrier
  const limit = `to carry at most ${percent(loadShareLimit)} of body mass`
  if (leftOut)
    return `The link says ${kg(massKg)}, a stand-in, and that you want ${limit}. What depends on you, such as energy, will read differently there.`
  const told = [
    kg(massKg),
    heightCm === null ? '' : cm(heightCm),
    ageYears === null ? '' : `${ageYears} years`,
    sex ?? '',
  ].filter(Boolean)
  return `The link tells of you: ${told.join(', ')}, and that you want ${limit}.`
}

/** Made ahead of the click that uses it: browsers let a page copy only at once. */
function useLinkOf(document: PlanDocument): SharedLink | null {
  const [made, setMade] = useState<SharedLink | null>(null)
  useEffect(() => {
    let outdated = false
    void shareLink(document, new URL(location.href)).then(next => {
      if (!outdated) setMade(next)
    })
    return () => {
      outdated = true
    }
  }, [document])
  return made
}

/** The buttons stand while the link is being made, so that nothing below them moves. */
function Ways({ link, name }: { link: string | null; name: string }) {
  const [done, setDone] = useState<'copied' | 'by hand' | 'code' | null>(null)
  const [canSend] = useState(() => typeof navigator.share === 'function')

  async function copy(made: string) {
    try {
      await navigator.clipboard.writeText(made)
      setDone('copied')
    } catch {
      // No leave to copy, or no clipboard here: the hiker can still do it.
      setDone('by hand')
    }
  }

  async function send(made: string) {
    try {
      await navigator.share({ title: name || 'Pack Reckoner plan', url: made })
    } catch (error) {
      // Thinking better of it is no failure; anything else leaves the link to be copied.
      if (!(error instanceof DOMException && error.name === 'AbortError')) setDone('by hand')
    }
  }

  const ways = [
    { label: 'Copy link', act: copy },
    ...(canSend ? [{ label: 'Send link', act: send }] : []),
    { label: 'Show as a code', act: () => setDone('code') },
  ]
  return (
    <>
      <div class="actions">
        {ways.map(({ label, act }) => (
          <button
            key={label}
            type="button"
            class="quiet"
            disabled={!link}
            onClick={link ? () => void act(link) : undefined}
          >
            {label}
          </button>
        ))}
      </div>
      {link ? <Done done={done} link={link} /> : null}
    </>
  )
}

function Done({ done, link }: { done: 'copied' | 'by hand' | 'code' | null; link: string }) {
  return (
    <>
      <div role="status">
        {done === 'copied' ? <p class="hint">The link is copied: {count(link.length)} characters.</p> : null}
        {done !== null && done !== 'code' && link.length > SHARE_CAPS.easyLinkChars ? (
          <p class="hint">
            Some programs cut links of more than {count(SHARE_CAPS.easyLinkChars)} characters. If it does not
            open at the other end, send the plan as a file.
          </p>
        ) : null}
        {done === 'code' && link.length > SHARE_CAPS.codeBytes ? (
          <p class="problem">
            This plan is too large for a code: its link has {count(link.length)} characters, and a code is
            read well up to {count(SHARE_CAPS.codeBytes)}. Copy the link, or save the plan as a file.
          </p>
        ) : null}
      </div>
      {done === 'by hand' ? <ByHand link={link} /> : null}
      {done === 'code' && link.length <= SHARE_CAPS.codeBytes ? <CodePicture link={link} /> : null}
    </>
  )
}

function ByHand({ link }: { link: string }) {
  return (
    <div class="field">
      <label for="share-link">The browser did not copy it: copy the link from here</label>
      <input
        id="share-link"
        type="text"
        readOnly
        value={link}
        ref={field => field?.select()}
        onFocus={event => event.currentTarget.select()}
      />
    </div>
  )
}

const count = (n: number) => n.toLocaleString('en')
