// Whether a page fits its window, and whether what can be touched on it is large enough.
import type { Page } from 'playwright-core'
import { expect } from 'vitest'
import { expectAccessible } from './axe'
import { at320, untilQuiet } from './harness'

/** What sticks out to the side, in CSS px, once drawings have taken the width that there is. */
export const tooWide = (page: Page) =>
  page.evaluate(async () => {
    for (let frame = 0; frame < 2; frame++) await new Promise(requestAnimationFrame)
    return document.documentElement.scrollWidth - document.documentElement.clientWidth
  })

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

/** Text so many times as large as the reader's own, as it may be set. */
const textSize = (page: Page, times: number) =>
  page.evaluate(
    size => {
      document.documentElement.style.fontSize = size
    },
    `${100 * times}%`,
  )

/** Text twice as large. */
export const enlarge = (page: Page) => textSize(page, 2)

/** What sticks out with letters and words as far apart as a reader may set them; the page is left as it was. */
export async function tooWideSpaced(page: Page): Promise<number> {
  const space = (letters: string, words: string) =>
    page.evaluate(
      ([letters, words]) => {
        document.body.style.letterSpacing = letters!
        document.body.style.wordSpacing = words!
      },
      [letters, words],
    )
  await space('0.12em', '0.16em')
  const px = await tooWide(page)
  await space('', '')
  return px
}

/** What sticks out in the smallest window with text twice as large; the page is left as it was. */
export async function tooWideAtSmallest(page: Page): Promise<number> {
  const before = page.viewportSize()!
  await page.setViewportSize(at320().viewport!)
  await enlarge(page)
  const px = await tooWide(page)
  await textSize(page, 1)
  await page.setViewportSize(before)
  return px
}

/**
 * Asserts that the page, as it stands, keeps the rules of every screen: accessible, not too wide
 * here nor in 320 px with text twice as large, and nothing within it too small to touch.
 */
export async function expectKeepsRules(
  page: Page,
  { state = '', touchedWithin = 'body' } = {},
): Promise<void> {
  await untilQuiet(page)
  await expectAccessible(page)
  expect(await tooWide(page), state).toBeLessThanOrEqual(0)
  expect(await tooSmall(page, touchedWithin), state).toEqual([])
  expect(await tooWideAtSmallest(page), `${state} in 320 px with text twice as large`).toBeLessThanOrEqual(0)
}
