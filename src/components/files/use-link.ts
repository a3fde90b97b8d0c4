// What comes in the address of the page.

import { useEffect, useState } from 'preact/hooks'

/** A plan, or packs, that came in the address. It is taken out of it at once, so that no history keeps it. */
export function useLink() {
  const [link, setLink] = useState(takeLink)
  useEffect(() => {
    const take = () => setLink(before => takeLink() ?? before)
    addEventListener('hashchange', take)
    return () => removeEventListener('hashchange', take)
  }, [])
  return [link, () => setLink(null)] as const
}

function takeLink() {
  const { hash, pathname, search } = location
  if (!/^#(plan|packs)=/.test(hash)) return null
  history.replaceState(null, '', pathname + search)
  return hash
}
