// Accessibility by rule: axe-core inside the page, run through the debugger so that the page's own policy stays on.
import { readFileSync } from 'node:fs'
import { createRequire } from 'node:module'
import type { AxeResults, RunOptions } from 'axe-core'
import type { Page } from 'playwright-core'
import { expect } from 'vitest'

const source = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8')

// WCAG 2.2 A and AA with axe's best practices; the 7:1 contrast for text is the house's own, from level AAA.
// Target size is measured by sizes.ts, to 44 px: this rule also counts what the foot half covers in passing.
const rules: RunOptions = {
  runOnly: ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'],
  // What keeps to 7:1 keeps to 4.5:1: the weaker rule looks at the same text once more.
  rules: {
    'color-contrast': { enabled: false },
    'color-contrast-enhanced': { enabled: true },
    'target-size': { enabled: false },
  },
  resultTypes: ['violations'],
}

/** The rule that another light can break. */
const contrast: RunOptions = {
  runOnly: { type: 'rule', values: ['color-contrast-enhanced'] },
  resultTypes: ['violations'],
}

/**
 * Asserts that the page, as it stands, breaks none of the rules; says which element breaks which otherwise. That every
 * ink keeps its contrast on every ground in both lights is proved of the colours themselves (styles.test.ts).
 */
export async function expectAccessible(page: Page): Promise<void> {
  await page.emulateMedia({ colorScheme: 'light' })
  await expectKept(page, rules, 'by day')
}

/** Asserts that no text of the page is too faint in the dark; the page is left in the daylight. */
export async function expectAccessibleInDark(page: Page): Promise<void> {
  await page.emulateMedia({ colorScheme: 'dark' })
  await expectKept(page, contrast, 'in the dark')
  await page.emulateMedia({ colorScheme: 'light' })
}

async function expectKept(page: Page, options: RunOptions, light: string): Promise<void> {
  if (!(await page.evaluate('"axe" in globalThis'))) await page.evaluate(source)
  const results = await page.evaluate(async runOptions => {
    const { axe } = globalThis as unknown as { axe: { run: (options: RunOptions) => Promise<AxeResults> } }
    return axe.run(runOptions)
  }, options)
  const found = results.violations.flatMap(rule =>
    rule.nodes.map(node => `${rule.id}: ${node.target.join(' ')} (${node.failureSummary ?? rule.help})`),
  )
  expect(results.passes.length + results.violations.length, light).toBeGreaterThan(0)
  expect(found, light).toEqual([])
}
