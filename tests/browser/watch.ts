// Collects everything that goes wrong in a page: console errors, uncaught errors, breaches of the content policy,
// requests that failed or were answered with an error.
import type { Page } from 'playwright-core'

export interface Troubles {
  list: string[]
}

/** Starts watching; call it before the page's first visit. */
export async function watch(page: Page): Promise<Troubles> {
  const troubles: Troubles = { list: [] }
  const note = (text: string) => troubles.list.push(text)
  page.on('pageerror', error => note(`uncaught: ${error.message}`))
  page.on('console', message => {
    if (message.type() === 'error' || message.type() === 'warning')
      note(`console ${message.type()}: ${message.text()}`)
  })
  page.on('requestfailed', request => {
    const why = request.failure()?.errorText ?? ''
    // A page that is left drops what it was still fetching.
    if (why !== 'net::ERR_ABORTED') note(`request failed: ${request.url()} ${why}`)
  })
  page.on('response', response => {
    if (response.status() >= 400) note(`answered ${response.status()}: ${response.url()}`)
  })
  await page.exposeFunction('noteBreach', (what: string) => note(`content policy: ${what}`))
  await page.addInitScript(() => {
    addEventListener('securitypolicyviolation', ({ effectiveDirective, blockedURI, sample }) => {
      const { noteBreach } = globalThis as unknown as { noteBreach: (what: string) => void }
      noteBreach(`${effectiveDirective} stopped ${blockedURI} ${sample}`)
    })
  })
  return troubles
}
