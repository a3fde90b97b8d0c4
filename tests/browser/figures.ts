// Every figure that a page shows, and whether its reason is within reach. A figure is a number with its unit, a share
// or a ratio. Where the app has reckoned it, it stands in a region marked data-figures="why", where a tap on one names the
// very same figure in its sheet. Regions marked "typed" show what the hiker typed; those marked "cited" name what
// they rest on in the same breath. Fields say where their defaults come from by themselves; drawings have their words
// beside them; the ticker is a door to the need, and a row marked so to the page with its reasons. Paper answers no questions: the sheet is not looked at.

import type { Page } from 'playwright-core'
import { expect } from 'vitest'

export interface Seen {
  figure: string
  /** Words around it, for who has to mend it. */
  near: string
  state: 'why' | 'typed' | 'cited' | 'unmarked' | 'unexplained'
}

const ASKS = '.ask[aria-haspopup], .warning-ask'

/**
 * Asks every figure in view, one sheet after the other, until none is still on its way: the reasons are kept with the
 * buttons for `figuresOn`, and the figures that the sheets show beside them are returned.
 */
export async function askAll(page: Page): Promise<Seen[]> {
  const seen: Seen[] = []
  for (const index of await askPlain(page)) {
    await page.evaluate(([asks, index]) => document.querySelectorAll<HTMLElement>(asks)[index]!.click(), [
      ASKS,
      index,
    ] as const)
    const sheet = page.locator('dialog[open]').last()
    await sheet.waitFor()
    await page.waitForFunction(
      () => !/Opening…/.test(document.querySelector('dialog[open]')?.textContent ?? ''),
    )
    // What a sheet holds may be asked in turn.
    for (const inner of await sheet.locator('.ask').all()) {
      await inner.evaluate(button => (button as HTMLElement).click())
      await page.locator('dialog dialog[open] :is(.why-panel, .why-none)').first().waitFor()
      await keepReason(page)
      await closeSheet(page)
    }
    seen.push(...(await figuresOn(page, 'dialog[open]')))
    await keepReason(page)
    await closeSheet(page)
  }
  return seen
}

/** Asks all whose sheets hold nothing but reasons, within the page, which is quick; returns the others by number. */
const askPlain = (page: Page): Promise<number[]> =>
  page.evaluate(async asks => {
    const others: number[] = []
    const until = async (isSo: () => boolean) => {
      for (let frames = 0; !isSo(); frames++) {
        if (frames > 900) throw new Error('a sheet does not open or close')
        await new Promise(requestAnimationFrame)
      }
    }
    const sheetOf = (ask: HTMLElement) =>
      ask.nextElementSibling instanceof HTMLDialogElement ? ask.nextElementSibling : null
    for (const [index, ask] of [...document.querySelectorAll<HTMLElement>(asks)].entries()) {
      if (!ask.checkVisibility()) continue
      ask.click()
      await until(() => sheetOf(ask)?.querySelector('.over-box > :nth-child(2)') != null)
      await until(() => !/Opening…/.test(sheetOf(ask)?.textContent ?? ''))
      const sheet = sheetOf(ask)!
      if (sheet.querySelector('.over-box > :not(.over-head, .why-panel, .why-none)')) others.push(index)
      else ask.dataset.reason = [...sheet.querySelectorAll('.why-panel')].map(at => at.textContent).join(' ')
      sheet.close()
      await until(() => !sheetOf(ask))
    }
    return others
  }, ASKS)

/** Keeps the text of the reasons in the sheet on top with the button that opened it. */
const keepReason = (page: Page) =>
  page.evaluate(() => {
    const sheet = [...document.querySelectorAll('dialog[open]')].at(-1)
    const button = sheet?.previousElementSibling
    if (!(sheet && button instanceof HTMLElement)) throw new Error('no sheet is open')
    button.dataset.reason = [...sheet.querySelectorAll('.why-panel')]
      .map(panel => panel.textContent)
      .join(' ')
  })

/** Closes the sheet on top and waits until it has gone. */
async function closeSheet(page: Page) {
  const count = await page.locator('dialog[open]').count()
  await page.evaluate(() => [...document.querySelectorAll<HTMLDialogElement>('dialog[open]')].at(-1)?.close())
  await expect.poll(() => page.locator('dialog').count()).toBe(count - 1)
}

/** Opens what is folded away, reasons aside, so that what is in it is looked at too. */
export async function unfold(page: Page): Promise<void> {
  for (let round = 0; round < 3; round++)
    await page.evaluate(() => {
      const folded = 'details:not([open]):not(.why-panel details)'
      for (const details of document.querySelectorAll<HTMLDetailsElement>(folded))
        if (details.checkVisibility()) details.open = true
    })
}

/** The figures in view within a part of the page. They must have been asked: see `askAll`. */
export const figuresOn = (page: Page, within = 'body'): Promise<Seen[]> =>
  page.evaluate(within => {
    const root = [...document.querySelectorAll(within)].at(-1)
    if (!root) throw new Error(`${within} is not on the page`)
    const UNITS =
      'kg|g|lb|oz|L|mL|qt|km|m|cm|mm|mi|ft|in|h|min|kcal|kcal/kg|kJ|W|%|days?|nights?|times as much|km/h|m/h|L/h|qt/h|g/L|g/kg|kg/L|°C|°F|of \\d+ (?:cases|trips)|chances? in \\d+'
    const FIGURE = new RegExp(
      `(?<![\\p{L}\\d.,])[\\d][\\d.,\\u202f\\u2009]*(?:\\s?(?:[–-]|to)\\s?[\\d.,]+)?[\\s\\u00a0\\u202f]?(?:${UNITS})(?![\\p{L}\\d/])`,
      'gu',
    )
    // Words that no figure is looked for in: fields, drawings, panels themselves, the door to the need, units on axes.
    const PASSED =
      '.field, svg, .why-panel, .ticker, .door, script, style, .left-out, .picture-same, .unseen, select'
    const plain = (text: string) => text.replace(/[\s\u00a0\u202f\u2009]+/g, ' ')
    const panels = new Map<Element, string>()
    const answersOf = (region: Element) => {
      const known = panels.get(region)
      if (known !== undefined) return known
      const open = [...region.querySelectorAll('.why-panel')].map(panel => panel.textContent ?? '')
      const asked = [...region.querySelectorAll<HTMLElement>('[data-reason]')].map(
        at => at.dataset.reason ?? '',
      )
      const text = plain([...open, ...asked].join(' '))
      panels.set(region, text)
      return text
    }
    const stateOf = (figure: string, parent: Element): Seen['state'] => {
      const region = parent.closest<HTMLElement>('[data-figures]')
      const mark = region?.dataset.figures
      if (!region || !mark) return 'unmarked'
      if (mark === 'typed' || mark === 'cited') return mark
      return answersOf(region).includes(figure) ? 'why' : 'unexplained'
    }
    const seen: Seen[] = []
    const blocks = new Set<Element>()
    const walker = document.createTreeWalker(root, NodeFilter.SHOW_TEXT)
    // A figure may be split over text nodes: the innermost block that holds text is read as a whole.
    for (let node = walker.nextNode(); node; node = walker.nextNode()) {
      const parent = node.parentElement
      if (!parent || !node.textContent?.trim() || parent.closest(PASSED) || !parent.checkVisibility())
        continue
      let block: Element = parent
      while (getComputedStyle(block).display === 'inline' && block.parentElement) block = block.parentElement
      blocks.add(block)
    }
    for (const block of blocks) {
      const text = plain(ownText(block))
      for (const [figure] of text.matchAll(FIGURE)) {
        const state = stateOf(figure, block)
        seen.push({ figure, near: text.slice(0, 90), state })
      }
    }
    return seen

    /** The text of a block without that of blocks in it. */
    function ownText(block: Element): string {
      return [...block.childNodes]
        .map(child => {
          if (child.nodeType === Node.TEXT_NODE) return child.textContent ?? ''
          if (!(child instanceof HTMLElement) || child.matches(PASSED)) return ' '
          return getComputedStyle(child).display === 'inline' ? ownText(child) : ' '
        })
        .join('')
    }
  }, within)
