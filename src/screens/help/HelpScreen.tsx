// How the model works, on one page: closed parts that are themselves the list of contents, beside which a desk has them
// once more. An invented trip stands for all; it is reckoned when the page is opened.

import { useEffect, useMemo, useState } from 'preact/hooks'
import { useFormats } from '../../components/fields'

import { OtherPlan } from '../../components/why'

import { exampleOf } from '../../report/help'
import './help.css'
import { Part } from './Part'
import { PARTS } from './parts'

/** What a desk shows open: the parts with pictures, which come first. */
const PICTURES = 4

export function HelpScreen({ onClose, isDesk = false }: { onClose: () => void; isDesk?: boolean }) {
  const formats = useFormats()
  const example = useMemo(() => exampleOf(), [])
  const [open, setOpen] = useState<ReadonlySet<string>>(
    () => new Set(isDesk ? PARTS.slice(0, PICTURES).map(({ id }) => id) : []),
  )
  const isAllOpen = open.size === PARTS.length
  const setAll = (to: boolean) => setOpen(new Set(to ? PARTS.map(({ id }) => id) : []))
  const set = (id: string, to: boolean) => {
    setOpen(before => new Set(to ? [...before, id] : [...before].filter(each => each !== id)))
  }
  useEffect(() => {
    // Paper has nothing to tap.
    const onPrint = () => setAll(true)
    addEventListener('beforeprint', onPrint)
    return () => removeEventListener('beforeprint', onPrint)
  }, [])
  const goTo = (id: string) => {
    set(id, true)
    const summary = document.querySelector<HTMLElement>(`#${id} > summary`)
    summary?.focus({ preventScroll: true })
    summary?.scrollIntoView({ block: 'start' })
  }
  return (
    <OtherPlan.Provider value={example}>
      <div class="screen help">
        <div class="heading">
          <h1>How it works</h1>
          <button type="button" class="quiet" onClick={onClose}>
            Back
          </button>
        </div>
        <p>
          Gear and trip give two figures: the room you need and the heaviest load. Each pack is held against
          both. The pictures show an invented trip: tap a dotted figure for its reason.
        </p>
        <nav class="help-contents" aria-label="Contents">
          <ul>
            {PARTS.map(({ id, title }) => (
              <li key={id}>
                <button type="button" class="link" onClick={() => goTo(id)}>
                  {title}
                </button>
              </li>
            ))}
          </ul>
        </nav>
        <div class="help-parts">
          {PARTS.map(({ id, title, figures, Contents }) => (
            <Part
              key={id}
              {...{ id, title, figures }}
              isOpen={open.has(id)}
              onToggle={isOpen => set(id, isOpen)}
            >
              {() => <Contents example={example} formats={formats} />}
            </Part>
          ))}
        </div>
        <div class="actions">
          <button type="button" class="quiet" onClick={() => setAll(!isAllOpen)}>
            {isAllOpen ? 'Close all' : 'Open all'}
          </button>
        </div>
      </div>
    </OtherPlan.Provider>
  )
}
