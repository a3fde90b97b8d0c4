// The second copy in the page: looked at soon after the start, brought up to date a few seconds after each save and
// when the page is hidden. Loaded after the first picture, since nothing on it waits for this.

import { effect } from '@preact/signals'
import { inTurn } from './in-turn'
import { nameOf } from './messages'
import { createShadow } from './shadow'
import type { ShadowEnvironment } from './shadow-environment'
import { GONE_TEXT } from './shadow-restore'
import { openVault } from './shadow-vault'

const EVERY_MS = 3000

interface PageEnvironment extends Omit<ShadowEnvironment, 'vault' | 'alone'> {
  /** Writes what is unsaved. */
  flush: () => Promise<void>
}

/** Never rejects: what goes wrong is in `state.copy`. */
export async function startShadow({ flush, ...env }: PageEnvironment): Promise<void> {
  const { state, lost } = env
  try {
    // Without a secure address there is no hash either, nor any of the places the copy could lie in.
    const vault = globalThis.crypto?.subtle ? await openVault() : null
    if (!vault) {
      state.copy.value = { kind: 'absent' }
      if (lost()) state.tell(GONE_TEXT)
      return
    }
    const shadow = createShadow({ ...env, vault, alone: inTurn('pack-reckoner-copy') })
    await shadow.check()
    await shadow.sync()
    follow(state.saveState, shadow.sync)
    document.addEventListener('visibilitychange', () => {
      if (document.visibilityState === 'hidden') void flush().then(shadow.sync)
    })
  } catch (error) {
    state.copy.value = { kind: 'failed', why: nameOf(error) }
    if (lost()) state.tell(GONE_TEXT)
  }
}

/** Every save makes a new save state; the copy follows after a while, however many there were. */
function follow(saveState: ShadowEnvironment['state']['saveState'], sync: () => Promise<void>) {
  let isDue = false
  effect(() => {
    if (saveState.value.kind !== 'saved' || isDue) return
    isDue = true
    setTimeout(() => {
      isDue = false
      void sync()
    }, EVERY_MS)
  })
}
