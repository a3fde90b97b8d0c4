// Every figure that a page shows, and whether its reason is within reach. A figure is a number with its unit, a share
// or a ratio. Where the app has reckoned it, it stands in a region marked data-figures="why", whose "Why?" names the
// very same figure when it is opened. Regions marked "typed" show what the hiker typed; those marked "cited" name what
// they rest on in the same breath. Fields say where their defaults come from by themselves; drawings have their words
// beside them; the ticker is a door to the need. Paper answers no questions: the sheet is not looked at.

import type { Page } from 'playwright-core'

export interface Seen {
  figure: string
  /** Words around it, for who has to mend it. */
  near: string
  state: 'why' | 'typed' | 'cited' | 'unmarked' | 'unexplained'
}

/** Opens every "Why?" that is in view, and every line of every panel, until no panel is still on its way. */
export async function openReasons(page: Page): Promise<void> {
  // A reason may hold others, which come into view with it.
  for (let round = 0; round < 3; round++) {
    const opened = await page.evaluate(() => {
      const closed = [...document.querySelectorAll<HTMLDetailsElement>('details.why-details:not([open])')]
      const inView = closed.filter(why => why.checkVisibility())
      for (const why of inView) why.open = true
      return inView.length
    })
    if (opened === 0) return
    await page.waitForFunction(() =>
      [...document.querySelectorAll('details.why-details[open]')].every(
        why => !why.checkVisibility() || why.querySelector('.why-panel, .why-none'),
      ),
    )
  }
}

/** Opens what is folded away, reasons aside, so that what is in it is looked at too. */
export async function unfold(page: Page): Promise<void> {
  for (let round = 0; round < 3; round++)
    await page.evaluate(() => {
      const folded = 'details:not([open]):not(.why-details):not(.why-panel details)'
      for (const details of document.querySelectorAll<HTMLDetailsElement>(folded))
        if (details.checkVisibility()) details.open = true
    })
}

/** The figures in view. Reasons must be open: see `openReasons`. */
export const figuresOn = (page: Page): Promise<Seen[]> =>
  page.evaluate(() => {
    const UNITS =
      'kg|g|lb|oz|L|mL|qt|km|m|cm|mm|mi|ft|in|h|min|kcal|kcal/kg|kJ|W|%|days?|nights?|times as much|km/h|m/h|L/h|qt/h|g/L|g/kg|kg/L|°C|°F|of \\d+ (?:cases|trips)'
    const FIGURE = new RegExp(
      `(?<![\\p{L}\\d.,])[\\d][\\d.,\\u202f\\u2009]*(?:\\s?(?:[–-]|to)\\s?[\\d.,]+)?[\\s\\u00a0\\u202f]?(?:${UNITS})(?![\\p{L}\\d/])`,
      'gu',
    )
    // Words that no figure is looked for in: fields, drawings, panels themselves, the door to the need, units on axes.
    const PASSED =
      '.field, svg, .why-panel, .ticker, script, style, .left-out, .picture-same, .unseen, select'
    const plain = (text: string) => text.replace(/[\s\u00a0\u202f\u2009]+/g, ' ')
    const panels = new Map<Element, string>()
    const answersOf = (region: Element) => {
      const known = panels.get(region)
      if (known !== undefined) return known
      const text = [...region.querySelectorAll('.why-panel')]
        .map(panel => plain(panel.textContent ?? ''))
        .join(' ')
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
    const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT)
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
  })
