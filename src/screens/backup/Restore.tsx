// A backup, before anything of it is taken in: what would come, differ, stay and go; merge it or let it take the place
// of everything. Afterwards the way back stands where the button stood.

import './backup.css'
import { useEffect, useMemo, useRef, useState } from 'preact/hooks'
import { type Backup, bringsNothing, compareBackup, restored, type Wishes } from '../../files/backup'
import { Choice } from '../../parts/fields'
import { newId } from '../../store'
import type { TakenIn } from '../../store/later'
import { theBackups } from './look'
import { RestoreShelf, RestoreTrips } from './RestoreLists'
import { Result } from './Result'
import { dayText, many } from './words'

interface RestoreProps {
  backup: Backup
  /** What it is called: the name of the file, or of the snapshot. */
  from: string
  onDone: () => void
}

const HOW = [
  { value: 'merge', label: 'Merge' },
  { value: 'replace', label: 'Replace all' },
] as const

const HOW_HINTS = {
  merge: 'What is new comes in. Nothing that is here goes, unless you choose the file’s instead.',
  replace: 'Everything here goes, and what is in the file takes its place.',
}

export function Restore({ backup, from, onDone }: RestoreProps) {
  const [wishes, setWishes] = useState<Wishes>({ how: 'merge', trips: {}, shelf: 'both' })
  const [taken, setTaken] = useState<TakenIn | null>(null)
  const [isBusy, setBusy] = useState(false)
  const [problem, setProblem] = useState<string | null>(null)
  const heading = useRef<HTMLHeadingElement>(null)
  const here = useMemo(() => theBackups().contents(), [])
  const comparison = useMemo(() => compareBackup(here, backup), [here, backup])
  useEffect(() => heading.current?.focus(), [taken])

  async function takeIn() {
    setBusy(true)
    const { how } = wishes
    const label = how === 'merge' ? 'Backup merged' : 'Everything replaced by a backup'
    try {
      const next = restored(here, backup, wishes, newId)
      setTaken(await theBackups().takeIn(next, label))
    } catch (error) {
      const why = error instanceof Error ? error.message : String(error)
      setProblem(`The backup could not be taken in (${why}); nothing here has changed.`)
    }
    setBusy(false)
  }

  const things = backup.shelf?.things.length ?? 0
  const isAllHere = wishes.how === 'merge' && bringsNothing(comparison)
  return (
    <div class="screen received">
      <h1 ref={heading} tabIndex={-1}>
        {taken ? 'Taken in' : backup.savedOn ? `Backup of ${dayText(backup.savedOn)}` : 'A backup'}
      </h1>
      {taken ? (
        <Result taken={taken} before={here} onDone={onDone} />
      ) : (
        <>
          <p class="lead">
            {many(backup.trips.length, 'trip')}, {many(things, 'thing')} on the shelf.
          </p>
          <p class="hint">
            From <bdi>{from}</bdi>. Nothing here changes before you say so.
          </p>
          <LeftOut backup={backup} />
          <Choice
            label="What to do with it"
            options={HOW}
            chosen={wishes.how}
            onChoose={how => setWishes({ ...wishes, how })}
          />
          <p class="hint">{HOW_HINTS[wishes.how]}</p>
          <RestoreTrips comparison={comparison} wishes={wishes} onWish={setWishes} />
          <RestoreShelf comparison={comparison} wishes={wishes} onWish={setWishes} />
          <Settings words={comparison.settings} wishes={wishes} isEmptyHere={comparison.isEmptyHere} />
          {isAllHere ? <p class="lead">All that is in this file is here already.</p> : null}
          <div class="actions">
            {isAllHere ? null : (
              <button type="button" class="primary" disabled={isBusy} onClick={() => void takeIn()}>
                {wishes.how === 'merge' ? 'Merge it' : 'Replace everything here'}
              </button>
            )}
            <button type="button" class="quiet" onClick={onDone}>
              Leave it
            </button>
          </div>
          {problem ? <p class="problem">{problem}</p> : null}
          {isAllHere ? null : (
            <p class="hint">What is here is kept as a snapshot first, and can be put back as it was.</p>
          )}
        </>
      )}
    </div>
  )
}

function LeftOut({ backup: { leftOut } }: { backup: Backup }) {
  if (leftOut.length === 0) return null
  return (
    <section>
      <h2>Damaged in the file</h2>
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
}

function Settings({ words, wishes, isEmptyHere }: SettingsProps) {
  if (words.length === 0) return null
  const isTaken = wishes.how === 'replace' || isEmptyHere
  return (
    <section>
      <h2>Settings</h2>
      <p>
        The file has {words.join(' and ')}: {isTaken ? 'these are taken over.' : 'yours stay.'}
      </p>
    </section>
  )
}
