// A thousand packs opened, sorted and filtered, and keys typed beside many packs.

import type { BrowserContextOptions, CDPSession, Locator, Page } from 'playwright-core'
import type { Records } from '../browser/database'
import { keys } from './large'
import { atShare, type Bench, PHONE, paintsOf, phoneWith, placeButton, scriptMs } from './phone'
import { documentOf } from './sizes'

const DESK: BrowserContextOptions = { viewport: { width: 1280, height: 800 } }

/** 1,000 packs and 40 items, at a desk and on a phone, the processor four times slower. */
export async function packs(bench: Bench, records: Records) {
  const act = async (page: Page, session: CDPSession, what: string, target: Locator) => {
    const box = (await target.boundingBox())!
    const since = await scriptMs(session)
    const [ms = 0] = await paintsOf(page, 'click', () =>
      page.mouse.click(box.x + box.width / 2, box.y + box.height / 2),
    )
    await page.waitForTimeout(1000)
    bench.note(`1,000 packs, ${what}, 4×: script, ms`, (await scriptMs(session)) - since)
    bench.note(`1,000 packs, ${what}, 4×: until it is painted, ms`, ms)
  }
  for (const [where, size] of [['desk', DESK] as const, ['phone', PHONE] as const]) {
    const { context, page, session } = await phoneWith(bench, records, 4, size)
    await act(page, session, `opened, ${where}`, placeButton(page, 'Packs'))
    bench.note(`1,000 packs, ${where}: elements`, await page.locator('*').count())
    if (where === 'desk')
      await act(page, session, 'sorted', page.getByRole('columnheader', { name: 'Mass' }).getByRole('button'))
    const count = page.locator('.counts button').first()
    await act(page, session, `filtered, ${where}`, count)
    await act(page, session, `filtered no more, ${where}`, count)
    await context.close()
  }
}

/** A key costs no more beside many packs. */
export async function keysBeside(bench: Bench, records: Records, what: string) {
  const { context, page, session } = await phoneWith(bench, records, 4)
  const { paints, script } = await keys(page, session)
  bench.note(`A key beside ${what}, 4×: until it is painted, 95 %, ms`, atShare(paints, 0.95))
  bench.note(`A key beside ${what}, 4×: all script, ms`, script)
  await context.close()
}

/** 40 items; every fifth pack can be worn in two ways, and some lack a rating or a price. */
export function withPacks(count: number) {
  const plan = documentOf({ items: 40, stops: 10, nights: 8, packs: count })
  const packs = plan.packs.map((pack, i) => {
    const setup = {
      ...pack.setups[0]!,
      massKg: 0.6 + ((i * 37) % 140) / 100,
      ratedKg: i % 11 === 0 ? null : 8 + ((i * 7) % 20),
      frame: i % 4 === 0 ? ('frameless' as const) : ('framed' as const),
    }
    const bare = { ...setup, name: 'stripped', massKg: setup.massKg - 0.3, frame: 'frameless' as const }
    const price = i % 3 === 0 ? null : 90 + ((i * 17) % 300)
    return {
      ...pack,
      bodyLitres: 20 + ((i * 13) % 70),
      price,
      currency: 'EUR',
      setups: i % 5 === 0 ? [setup, bare] : [setup],
    }
  })
  return { ...plan, packs }
}
