// Text typed beside a trip that is no part of it: a pasted list, a day's food being mixed. It stays while the panel is
// closed and over a reload of the tab, for each trip by itself.

import { signal } from '@preact/signals'
import { BESIDE, openTrip } from '../../store'

const texts = signal<Readonly<Record<string, string>>>({})

const storageKey = (key: string) => `${BESIDE}${key}`

/** The kept text of this name for the open trip, and the way to change it. */
export function useKept(name: string): [string, (text: string) => void] {
  const key = `${openTrip.value?.id ?? ''}/${name}`
  const text = texts.value[key] ?? stored(key)
  return [
    text,
    next => {
      texts.value = { ...texts.value, [key]: next }
      store(key, next)
    },
  ]
}

function stored(key: string): string {
  try {
    return sessionStorage.getItem(storageKey(key)) ?? ''
  } catch {
    // Storage may be switched off: the text then lasts as long as the page.
    return ''
  }
}

function store(key: string, text: string) {
  try {
    if (text) sessionStorage.setItem(storageKey(key), text)
    else sessionStorage.removeItem(storageKey(key))
  } catch {
    // Full or switched off: the text is in memory and stays as long as the page.
  }
}
