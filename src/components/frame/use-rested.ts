// What a value was when typing last rested.

import { useEffect, useState } from 'preact/hooks'

/** The packs are judged once typing rests: of hundreds that takes longer than a key should. */
const QUIET_MS = 120

/** The last value that stayed for a while; null before the first. */
export function useRested<T>(value: T): T | null {
  const [rested, setRested] = useState<T | null>(null)
  useEffect(() => {
    const timer = setTimeout(() => setRested(() => value), QUIET_MS)
    return () => clearTimeout(timer)
  }, [value])
  return rested
}
