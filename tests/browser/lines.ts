// The closed lines of the need.

import type { Page } from 'playwright-core'

/** Opens a closed line of the need by its name. */
export async function openLine(page: Page, name: string): Promise<void> {
  const line = page.locator('details.line', { has: page.getByRole('heading', { name, exact: true }) })
  await line.waitFor()
  if ((await line.getAttribute('open')) === null) await line.locator('summary').first().click()
}
