// The ways a link can go: copied, sent, or as a code for a camera.

import { useEffect, useState } from 'preact/hooks'
import { later } from '../../components/frame'
import { SHARE_CAPS, type SharedLink } from '../../files/share'
import { countText } from '../../units'

const CodePicture = later(async () => (await import('./CodePicture')).CodePicture)

/** The link to a document, made ahead of the click that uses it: browsers let a page copy only at once. */
export function useLinkOf<D>(
  document: D,
  make: (document: D, base: URL) => Promise<SharedLink>,
): SharedLink | null {
  const [made, setMade] = useState<SharedLink | null>(null)
  useEffect(() => {
    let outdated = false
    void make(document, new URL(location.href)).then(next => {
      if (!outdated) setMade(next)
    })
    return () => {
      outdated = true
    }
  }, [document])
  return made
}

/** The buttons stand while the link is being made, so that nothing below them moves. */
export function Ways({ link, name }: { link: string | null; name: string }) {
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
      await navigator.share({ title: name || 'Pack Reckoner', url: made })
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
        {done === 'copied' ? (
          <p class="hint">The link is copied: {countText(link.length)} characters.</p>
        ) : null}
        {done !== null && done !== 'code' && link.length > SHARE_CAPS.easyLinkChars ? (
          <p class="hint">
            Some programs cut links of more than {countText(SHARE_CAPS.easyLinkChars)} characters. If it does
            not open at the other end, send a file.
          </p>
        ) : null}
        {done === 'code' && link.length > SHARE_CAPS.codeBytes ? (
          <p class="problem">
            This is too large for a code: its link has {countText(link.length)} characters, and a code is read
            well up to {countText(SHARE_CAPS.codeBytes)}. Copy the link, or save a file.
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
