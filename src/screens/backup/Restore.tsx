// A backup, before anything of it is taken in: what would come, differ, stay and go; merge it or let it take the place
// of everything. Afterwards the way back stands where the button stood.

import './backup.css'
import { useEffect, useLayoutEffect, useRef, useState } from 'preact/hooks'
import { Choice } from '../../components/fields'
import { dayText, useStored } from '../../components/pieces'
import { type Backup, bringsNothing, type Comparison, comparing, type Wishes } from '../../files/backup'
import { beginInPortions } from '../../files/portions'
import { library, saveState, shelf, storeLoaded, tripList } from '../../store'
import type { TakenIn } from '../../store/lazy'
import { counted, listText } from '../../units'
import { RestoreShelf, RestoreTrips } from './RestoreLists'
import { Result } from './Result'
import { theBackups } from './the-backups'

interface RestoreProps {
  backup: Backup
  /** What it is called: the name of the file, or of the snapshot. */
  from: string
  isSnapshot: boolean
  onDone: () => void
}

const HOW = [
  { value: 'merge', label: 'Merge' },
  { value: 'replace', label: 'Replace all' },
] as const

const howHint = (how: Wishes['how'], source: string) =>
  how === 'merge'
    ? `What is new comes in. Nothing that is here goes, unless you choose the ${source}’s instead.`
    : `Everything here goes, and what is in the ${source} takes its place.`

const TAKEN_TITLES = { saving: 'Taking in…', saved: 'Taken in', unsaved: 'Taken in, but not saved' }

/** The file against what is here, and again when another tab changes that; null until it is done. */
function useComparison(backup: Backup, isWanted: boolean): Comparison | null {
  const [comparison, setComparison] = useState<Comparison | null>(null)
  const { system, theme, brightSun, largeTargets, packColumns } = library.value
  const live = [tripList.value, shelf.value, system, theme, brightSun, largeTargets, packColumns]
  // Before the page is drawn: most are compared by then.
  useLayoutEffect(() => {
    if (!isWanted) return
    return beginInPortions(comparing(theBackups().contents(), backup), setComparison)
  }, [backup, isWanted, ...live])
  return comparison
}

export function Restore({ backup, from, isSnapshot, onDone }: RestoreProps) {
  const [wishes, setWishes] = useState<Wishes>({ how: 'merge', trips: {}, shelf: 'both' })
  const [taken, setTaken] = useState<TakenIn | null>(null)
  const [isBusy, setBusy] = useState(false)
  const [problem, setProblem] = useState<string | null>(null)
  const heading = useRef<HTMLHeadingElement>(null)
  const isReading = !storeLoaded.value && saveState.value.kind !== 'memory-only'
  const [kind, source] = isSnapshot ? ['Snapshot', 'snapshot'] : ['Backup', 'file']
  const comparison = useComparison(backup, !isBusy && !taken)
  const isAllHere = wishes.how === 'merge' && comparison !== null && bringsNothing(comparison)
  const stored = useStored(taken)
  useEffect(() => heading.current?.focus(), [taken])

  async function takeIn() {
    setBusy(true)
    const { how } = wishes
    const label = how === 'merge' ? `${kind} merged` : `Everything replaced by a ${kind.toLowerCase()}`
    setProblem(null)
    try {
      setTaken(await theBackups().takeIn(backup, wishes, label))
    } catch (error) {
      const why = error instanceof Error ? error.message : String(error)
      setProblem(`The ${kind.toLowerCase()} could not be taken in (${why}); nothing here has changed.`)
    }
    setBusy(false)
  }

  const things = backup.shelf?.things.length ?? 0
  return (
    <div class="screen received">
      <h1 ref={heading} tabIndex={-1}>
        {taken
          ? TAKEN_TITLES[stored]
          : backup.savedOn
            ? `${kind} of ${dayText(backup.savedOn)}`
            : `A ${kind.toLowerCase()}`}
      </h1>
      {taken ? (
        <Result taken={taken} onDone={onDone} />
      ) : (
        <>
          <p class="lead">
            {counted(backup.trips.length, 'trip')}, {counted(things, 'item')} on the shelf.
          </p>
          <p class="hint">
            From <bdi>{from}</bdi>. Nothing here changes before you say so.
          </p>
          <LeftOut backup={backup} source={source} />
          {comparison ? (
            <>
              <Choice
                label="What to do with it"
                options={HOW}
                chosen={wishes.how}
                onChoose={how => setWishes({ ...wishes, how })}
              />
              <p class="hint">{howHint(wishes.how, source)}</p>
              <RestoreTrips comparison={comparison} wishes={wishes} onWish={setWishes} />
              <RestoreShelf comparison={comparison} wishes={wishes} onWish={setWishes} />
              <Settings
                words={comparison.settings}
                wishes={wishes}
                isEmptyHere={comparison.isEmptyHere}
                source={source}
              />
            </>
          ) : (
            <p class="hint loading">Comparing it with what is here…</p>
          )}
          {isReading ? <p class="hint">Your own trips are still being read.</p> : null}
          {isAllHere ? <p class="lead">All that is in this {source} is here already.</p> : null}
          <div class="actions">
            {isAllHere || !comparison ? null : (
              <button
                type="button"
                class="primary"
                disabled={isBusy || isReading}
                onClick={() => void takeIn()}
              >
                {wishes.how === 'merge' ? 'Merge it' : 'Replace everything here'}
              </button>
            )}
            <button type="button" class="quiet" onClick={onDone}>
              Leave it
            </button>
          </div>
          <div role="status">{isBusy ? <p>Taking in…</p> : null}</div>
          {problem ? <p class="problem">{problem}</p> : null}
          {isAllHere ? null : (
            <p class="hint">What is here is kept as a snapshot first, and can be put back as it was.</p>
          )}
        </>
      )}
    </div>
  )
}

function LeftOut({ backup: { leftOut }, source }: { backup: Backup; source: string }) {
  if (leftOut.length === 0) return null
  return (
    <section>
      <h2>Damaged in the {source}</h2>
      <p class="problem">This cannot be read and is left out. The rest can be used.</p>
      <ul class="plain">
        {leftOut.slice(0, 20).map(line => (
          <li key={line}>{line}</li>
        ))}
      </ul>
      {leftOut.length > 20 ? <p>And {leftOut.length - 20} more.</p> : null}
    </section>
  )
}

interface SettingsProps {
  words: string[]
  wishes: Wishes
  isEmptyHere: boolean
  source: string
}

function Settings({ words, wishes, isEmptyHere, source }: SettingsProps) {
  if (words.length === 0) return null
  const isTaken = wishes.how === 'replace' || isEmptyHere
  return (
    <section>
      <h2>Settings</h2>
      <p>
        The {source} has {listText(words)}: {isTaken ? 'these are taken over.' : 'yours stay.'}
      </p>
    </section>
  )
}
