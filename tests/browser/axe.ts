// Accessibility by rule: axe-core inside the page, run through the debugger so that the page's own policy stays on.
import { readFileSync } from 'node:fs'
import { createRequire } from 'node:module'
import type { AxeResults, RunOptions } from 'axe-core'
import type { Page } from 'playwright-core'
import { expect } from 'vitest'

const source = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8')

// WCAG 2.2 A and AA with axe's best practices; the 7:1 contrast for text is the house's own, from level AAA.
// Target size is measured by screens.test.ts, to 44 px: this rule also counts what the foot half covers in passing.
const options: RunOptions = {
  runOnly: ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'],
  rules: { 'color-contrast-enhanced': { enabled: true }, 'target-size': { enabled: false } },
  resultTypes: ['violations'],
}

/** Asserts that the page, as it stands, breaks none of the rules; says which element breaks which otherwise. */
export async function expectAccessible(page: Page): Promise<void> {
  await page.evaluate(source)
  const results = await page.evaluate(async runOptions => {
    const { axe } = globalThis as unknown as { axe: { run: (options: RunOptions) => Promise<AxeResults> } }
    return axe.run(runOptions)
  }, options)
  const found = results.violations.flatMap(rule =>
    rule.nodes.map(node => `${rule.id}: ${node.target.join(' ')} (${node.failureSummary ?? rule.help})`),
  )
  expect(results.passes.length + results.violations.length).toBeGreaterThan(0)
  expect(found).toEqual([])
}
