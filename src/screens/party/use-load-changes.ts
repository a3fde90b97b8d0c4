// What the last change did to each one's load, signed.

import { useRef } from 'preact/hooks'
import type { PartyReckoning } from '../../reckon'
import { type Formats, signedText } from '../../report'

type Loads = ReadonlyMap<string, number>

/** By the id of a person: "+0.8 kg"; nothing where it stays the same. */
export function useLoadChanges(reckoning: PartyReckoning, { kg }: Formats): ReadonlyMap<string, string> {
  const seen = useRef<{ of: PartyReckoning; now: Loads; before: Loads | null } | null>(null)
  if (seen.current?.of !== reckoning) {
    const now = new Map(reckoning.people.map(({ id, carriedKg }) => [id, carriedKg]))
    seen.current = { of: reckoning, now, before: seen.current?.now ?? null }
  }
  const { now, before } = seen.current
  return new Map(
    [...now].flatMap(([id, load]) => {
      const was = before?.get(id)
      const text = was === undefined ? null : signedText(load - was, kg)
      return text === null ? [] : [[id, text] as const]
    }),
  )
}
