import { useEffect, useMemo, useState } from 'preact/hooks'

/** Whether a media query is so now. */
export function useMedia(query: string): boolean {
  const list = useMemo(() => matchMedia(query), [query])
  const [matches, setMatches] = useState(list.matches)
  useEffect(() => {
    const onChange = () => setMatches(list.matches)
    list.addEventListener('change', onChange)
    return () => list.removeEventListener('change', onChange)
  }, [list])
  return matches
}
