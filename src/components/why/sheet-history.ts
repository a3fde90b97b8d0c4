// The way back closes an open sheet and not the page: while any is open there is one more entry in the history.

interface State {
  sheet?: true
}

/** How each open sheet is closed; the last one is on top. */
const open: (() => void)[] = []
/** The entry is being gone back from; until that is done nothing may be put in its place. */
let isLeaving = false

const hasEntry = () => (history.state as State | null)?.sheet === true

function push() {
  // Where the page is scrolled to is left to itself on the way back too.
  history.scrollRestoration = 'manual'
  if (!hasEntry()) history.pushState({ sheet: true } satisfies State, '')
}

function onBack() {
  if (isLeaving) isLeaving = false
  else open.pop()?.()
  if (open.length > 0) push()
  else if (!hasEntry()) history.scrollRestoration = 'auto'
}

/** A sheet has opened; `close` is called on the way back. */
export function enterSheet(close: () => void): void {
  addEventListener('popstate', onBack)
  open.push(close)
  if (!isLeaving) push()
}

/** That sheet has gone, however. */
export function leaveSheet(close: () => void): void {
  const at = open.indexOf(close)
  if (at >= 0) open.splice(at, 1)
  if (open.length > 0 || isLeaving || !hasEntry()) return
  isLeaving = true
  history.back()
}
