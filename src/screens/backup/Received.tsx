// A file from outside, before anything of it is kept: what it is, and the reader it belongs to.

import './backup.css'
import { useEffect, useMemo, useRef, useState } from 'preact/hooks'
import type { Looked } from '../../files/backup'
import { readPacks } from '../../files/pack-list'
import { newId } from '../../store'
import { lookInWorker } from '../../store/look'
import { PacksOffer, PlanOffer, SharedPlan } from '../share'
import { OPENERS } from './openers'
import { Restore } from './Restore'
import { type OpenerProps, SNAPSHOT_TYPE } from './types'

const TITLES = {
  plan: 'A plan from a file',
  backup: 'A backup',
  track: 'A track',
  table: 'A table',
  packs: 'Packs from a file',
  unread: 'This file cannot be opened',
}

/** Shows the file, or what hinders; `onDone` when it was taken in or left. */
export function Received({ file, onDone }: OpenerProps) {
  const [looked, setLooked] = useState<Looked | null>(null)
  const [tries, setTries] = useState(0)
  const heading = useRef<HTMLHeadingElement>(null)
  useEffect(() => {
    const left = new AbortController()
    const { signal } = left
    void lookInWorker(file, { signal }).then(found => signal.aborted || setLooked(found))
    return () => left.abort()
  }, [file, tries])
  useEffect(() => heading.current?.focus(), [looked])
  const tryAgain = () => {
    setLooked(null)
    setTries(tries + 1)
  }
  if (!looked) return <Reading onCancel={onDone} />
  if (looked.kind === 'link') return <SharedPlan link={looked.fragment} onDone={onDone} />
  if (looked.kind === 'backup') {
    const isSnapshot = file.type === SNAPSHOT_TYPE
    return <Restore backup={looked.backup} from={file.name} isSnapshot={isSnapshot} onDone={onDone} />
  }
  const Opener = looked.kind === 'track' || looked.kind === 'table' ? OPENERS[looked.kind] : null
  return (
    <div class="screen received">
      <h1 ref={heading} tabIndex={-1}>
        {TITLES[looked.kind]}
      </h1>
      {looked.kind === 'packs' ? <GivenPacks value={looked.value} name={file.name} onDone={onDone} /> : null}
      {looked.kind === 'plan' ? <PlanOffer document={looked.document} onDone={onDone} /> : null}
      {looked.kind === 'unread' ? (
        <Unread
          name={file.name}
          problems={looked.problems}
          onTryAgain={looked.canTryAgain ? tryAgain : null}
          onDone={onDone}
        />
      ) : null}
      {Opener ? <Opener file={file} onDone={onDone} /> : null}
    </div>
  )
}

function GivenPacks({ value, name, onDone }: { value: unknown; name: string; onDone: () => void }) {
  const read = useMemo(() => readPacks(value, newId), [value])
  return read.ok ? (
    <PacksOffer packs={read.packs} leftOut={read.leftOut} onDone={onDone} />
  ) : (
    <Unread name={name} problems={[read.message]} onTryAgain={null} onDone={onDone} />
  )
}

function Reading({ onCancel }: { onCancel: () => void }) {
  return (
    <div class="screen received">
      <p class="hint loading" role="status">
        Reading…
      </p>
      <div class="actions">
        <button type="button" class="quiet" onClick={onCancel}>
          Cancel
        </button>
      </div>
    </div>
  )
}

interface UnreadProps {
  name: string
  problems: string[]
  /** Null: it would be the same again. */
  onTryAgain: (() => void) | null
  onDone: () => void
}

function Unread({ name, problems, onTryAgain, onDone }: UnreadProps) {
  return (
    <>
      <p>
        <bdi class="name">{name}</bdi> was not opened; nothing here has changed.
      </p>
      <ul class="problem">
        {problems.slice(0, 10).map(problem => (
          <li key={problem}>{problem}</li>
        ))}
      </ul>
      <div class="actions">
        {onTryAgain ? (
          <button type="button" class="quiet" onClick={onTryAgain}>
            Try again
          </button>
        ) : null}
        <button type="button" class="primary" onClick={onDone}>
          Go on without it
        </button>
      </div>
    </>
  )
}
