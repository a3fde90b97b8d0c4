// Whether a page fits its window, and whether what can be touched on it is large enough.
import type { Page } from 'playwright-core'

/** What sticks out to the side, in CSS px. */
export const tooWide = (page: Page) =>
  page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth)

const CONTROLS =
  'button, select, summary, textarea, input[type="text"], input[type="date"], .file, .option, .toggle'

/** Controls that are smaller than 44 CSS px either way, inline links in text aside. */
export const tooSmall = (page: Page, within = 'body') =>
  page.evaluate(
    ([within, controls]) =>
      [...document.querySelectorAll(`${within} :is(${controls})`)]
        .filter(control => control.checkVisibility())
        .flatMap(control => {
          const { width, height } = control.getBoundingClientRect()
          return width < 43.5 || height < 43.5
            ? [`${control.tagName} "${control.textContent.slice(0, 30)}" ${width} × ${height}`]
            : []
        }),
    [within, CONTROLS] as const,
  )

/** Text twice as large, as a reader may set it. */
export const enlarge = (page: Page) =>
  page.evaluate(() => {
    document.documentElement.style.fontSize = '200%'
  })
