// A pasted list as items: the text, the lines in doubt, the rest in one line, one edit that adds it all.
// Loaded when it is opened. The text stays for this trip until its lines are in the gear.

import { useEffect, useMemo, useRef, useState } from 'preact/hooks'
import { useFormats, useSystem } from '../../components/fields'
import { AddedWords } from '../../components/pieces'
import { addListed, LINE_END, LIST_CAPS, type NotUnderstood, readList, type Taken } from '../../files/list'
import { CAPS } from '../../plan'

import { actions, lastLabel, newId, openTrip } from '../../store'
import { counted } from '../../units'
import { FoodInto } from './FoodInto'
import { useKept } from './kept'
import { ClearRows, PastedRows, SHOWN_ROWS } from './PastedRows'
import { type Choices, chosenOf, isDoubtful, type Matched, withSuggestions } from './pasted'
import './gear.css'

const MOST_CONTAINERS = 3

/** `onTable`: goes over to tables, where that can be done. */
export function PasteList({ onTable }: { onTable?: () => void }) {
  const system = useSystem()
  const [text, setText] = useKept('list')
  const [choices, setChoices] = useState<Choices>({})
  const [added, setAdded] = useState<{ label: string; text: string } | null>(null)
  /** Why a pasted text did not come into the field. */
  const [refused, setRefused] = useState<string | null>(null)
  const read = useMemo(() => readList(text, { system }), [text, system])
  const matched = useRef<Matched>(new Map())
  const rows = useMemo(() => (read.ok ? withSuggestions(read.rows, matched.current) : []), [read])
  const taken = rows.map(row => chosenOf(row, choices)).filter(each => each.take)
  const apart = read.ok ? read.rows.filter((row): row is NotUnderstood => !row.ok) : []
  const [doubtful, clear] = useMemo(
    () => [rows.filter(isDoubtful), rows.filter(row => !isDoubtful(row))],
    [rows],
  )
  const bare = rows.filter(({ row }) => row.isBare).length
  const room = CAPS.items - (openTrip.value?.draft.gear.length ?? 0)

  /** Of a text that is far too long the browser would draw every line, and stand still meanwhile. */
  function onPaste(event: ClipboardEvent) {
    const pasted = event.clipboardData?.getData('text/plain') ?? ''
    if (pasted.length <= LIST_CAPS.bytes) return
    event.preventDefault()
    const found = readList(pasted, { system })
    setRefused(found.ok ? null : found.message)
  }

  function add() {
    const label = `Add ${counted(taken.length, 'item')}`
    actions.edit(label, draft => addListed(draft, taken, newId))
    setAdded({ label, text })
    setText(withoutLines(text, new Set(taken.map(({ row }) => row.line)), rows.length + apart.length))
  }

  return (
    <section class="paste" aria-label="Paste a list">
      <h3>Paste a list</h3>
      <div class="field">
        <label for="pasted">One item a line, with its mass</label>
        <textarea
          id="pasted"
          rows={8}
          autocomplete="off"
          spellcheck={false}
          aria-describedby="pasted-hint"
          placeholder={'Rain jacket 300 g\n2 x tent peg 14 g\nStove, 95 g, 0.4 L'}
          value={text}
          onPaste={onPaste}
          onInput={event => {
            setRefused(null)
            setText(event.currentTarget.value)
          }}
        />
        <p id="pasted-hint" class="hint">
          Bare numbers are {system === 'us' ? 'ounces' : 'grams'}. Columns of a spreadsheet do as well. A line
          of its own names a group. Up to {LIST_CAPS.lines} lines.
        </p>
      </div>
      {onTable ? (
        <p class="hint">
          A file, or columns to be chosen?{' '}
          <button type="button" class="link" onClick={onTable}>
            Import a table instead
          </button>
        </p>
      ) : null}
      {added ? (
        <Added added={added} onUndo={() => setText(added.text)} onGone={() => setAdded(null)} />
      ) : null}
      {refused ? (
        <p class="problem" role="status">
          {refused} Nothing of it was taken.
        </p>
      ) : null}
      {read.ok ? null : <p class="problem">{read.message}</p>}
      {read.ok && read.unusedColumns.length > 0 ? (
        <p class="hint">Columns not used: {read.unusedColumns.join(', ')}.</p>
      ) : null}
      {bare > 0 ? (
        <p class="hint">
          {counted(bare, 'line')} {bare === 1 ? 'ends' : 'end'} in a number without a unit, read as the mass
          in {system === 'us' ? 'ounces' : 'grams'}.
        </p>
      ) : null}
      {apart.length > 0 ? (
        <Apart rows={apart} onFix={(line, fixed) => setText(withLine(text, line, fixed))} />
      ) : null}
      {rows.length > 0 ? (
        <>
          <Sum taken={taken} />
          {taken.length > room ? (
            <p class="problem">The gear has room for {room} more items: leave some out.</p>
          ) : (
            <button type="button" class="primary" disabled={taken.length === 0} onClick={add}>
              Add {counted(taken.length, 'item')}
            </button>
          )}
          {doubtful.length > 0 ? (
            <>
              <h4>{counted(doubtful.length, 'line')} to look at</h4>
              <PastedRows rows={doubtful} choices={choices} onChoices={setChoices} />
            </>
          ) : null}
          {clear.length > 0 ? <ClearRows rows={clear} choices={choices} onChoices={setChoices} /> : null}
        </>
      ) : null}
    </section>
  )
}

/** What the ticked lines come to, so that it can be held against the list's own total. */
function Sum({ taken }: { taken: readonly Taken[] }) {
  const formats = useFormats()
  const kg = taken.reduce((sum, { row }) => sum + (row.massKg ?? 0) * (row.count ?? 1), 0)
  const without = (is: (each: Taken) => boolean) => taken.filter(is).length
  const open = [
    ['mass', without(({ row, kind }) => row.massKg === undefined && !kind)],
    ['litres', without(({ row, kind }) => row.litres === undefined && !kind && !row.worn)],
  ] as const
  const kinds = without(({ row, kind }) => kind !== null && row.litres === undefined)
  return (
    <p role="status">
      {counted(taken.length, 'item')}, {formats.gear(kg)} together.
      {open.map(([what, n]) => (n > 0 ? ` ${n} without ${what} yet.` : ''))}
      {kinds > 0 ? ' Litres typical of their kind, not measured.' : ''}
    </p>
  )
}

interface ApartProps {
  rows: readonly NotUnderstood[]
  onFix: (line: number, fixed: string) => void
}

function Apart({ rows, onFix }: ApartProps) {
  return (
    <div class="left-out">
      <h4>{counted(rows.length, 'line')} not understood, and kept</h4>
      <ul>
        {rows.slice(0, SHOWN_ROWS).map(({ line, text, why, fixes = [] }) => (
          <li key={line}>
            Line {line}, <q>{text.slice(0, 80)}</q>: {why}{' '}
            {fixes.map(fix => (
              <button
                key={fix.label}
                type="button"
                class="quiet"
                aria-label={`${fix.label} in line ${line}`}
                onClick={() => onFix(line, fix.text)}
              >
                {fix.label}
              </button>
            ))}
          </li>
        ))}
      </ul>
      {rows.length > SHOWN_ROWS ? <p class="hint">And {rows.length - SHOWN_ROWS} more.</p> : null}
    </div>
  )
}

interface AddedProps {
  added: { label: string; text: string }
  onUndo: () => void
  onGone: () => void
}

function Added({ added, onUndo, onGone }: AddedProps) {
  const said = useRef<HTMLParagraphElement>(null)
  useEffect(() => said.current?.focus(), [added])
  const undo = () => {
    actions.undo()
    onUndo()
    onGone()
    document.getElementById('pasted')?.focus()
  }
  const containers = (openTrip.value?.draft.gear ?? []).filter(item => item.holdsLitres !== undefined)
  return (
    <>
      <p class="added" ref={said} tabIndex={-1} role="status">
        <AddedWords deed={added} what={added.label.replace('Add ', '')} to="gear" />{' '}
        {lastLabel.value === added.label ? (
          <button type="button" class="quiet" onClick={undo}>
            Undo
          </button>
        ) : null}
      </p>
      {containers.slice(0, MOST_CONTAINERS).map(item => (
        <FoodInto key={item.id} item={item} />
      ))}
    </>
  )
}

/** The text with one of its lines, counted from 1, as another. */
function withLine(text: string, line: number, fixed: string): string {
  const lines = text.split(LINE_END)
  return lines.with(line - 1, fixed).join('\n')
}

/** The text without the lines that are in the gear now; nothing once none is left. */
function withoutLines(text: string, gone: Set<number>, all: number): string {
  if (gone.size === all) return ''
  const lines = text.split(LINE_END)
  return lines.filter((_, i) => !gone.has(i + 1)).join('\n')
}
