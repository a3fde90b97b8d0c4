// The second copy in the page: looked at soon after the start, brought up to date a few seconds after each save and
// when the page is hidden. Loaded after the first picture, since nothing on it waits for this.

import { effect } from '@preact/signals'
import { inTurn } from '../in-turn'
import { whyText } from '../why-not'
import type { CopyEnvironment } from './environment'
import { GONE_TEXT, LOST_TEXT } from './restore'
import { createSecondCopy } from './second-copy'
import { openVault } from './vault'

const EVERY_MS = 3000

/** One tab at a time writes the copy. */
export const copyTurn = inTurn('pack-reckoner-copy')

interface PageEnvironment extends Omit<CopyEnvironment, 'vault' | 'alone'> {
  /** Writes what is unsaved. */
  flush: () => Promise<void>
}

/** Never rejects: what goes wrong is in `state.copy`, and is tried again after the next save. */
export async function startSecondCopy({ flush, ...env }: PageEnvironment): Promise<void> {
  const { state, lost } = env
  let secondCopy: ReturnType<typeof createSecondCopy> | null = null
  let isThere = true

  async function look() {
    try {
      // Without a secure address there is no hash either, nor any of the places the copy could lie in.
      const vault = secondCopy ? null : globalThis.crypto?.subtle ? await openVault() : null
      if (vault) secondCopy = createSecondCopy({ ...env, vault, alone: copyTurn })
      isThere = secondCopy !== null
      if (!secondCopy) state.copy.value = { kind: 'absent' }
      else if (vault) await secondCopy.check()
      await secondCopy?.sync()
    } catch (error) {
      state.copy.value = { kind: 'failed', why: whyText(error) }
    }
  }

  await look()
  if (lost() && state.copy.peek().kind === 'absent') state.tell(GONE_TEXT)
  if (lost() && state.copy.peek().kind === 'failed') state.tell(LOST_TEXT)
  if (!isThere) return
  follow(state.saveState, look)
  document.addEventListener('visibilitychange', () => {
    if (document.visibilityState === 'hidden') void flush().then(look)
  })
}

/** Every save makes a new save state; the copy follows after a while, however many there were. */
function follow(saveState: CopyEnvironment['state']['saveState'], look: () => Promise<void>) {
  let isDue = false
  effect(() => {
    if (saveState.value.kind !== 'saved' || isDue) return
    isDue = true
    setTimeout(() => {
      isDue = false
      void look()
    }, EVERY_MS)
  })
}
