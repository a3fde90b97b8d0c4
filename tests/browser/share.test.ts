// A plan goes out as a link or a code and comes in as a trip of its own, with nothing kept until it is wanted.

import type { Page } from 'playwright-core'
import { describe, expect } from 'vitest'
import demo from '../../data/demo-plan.json'
import { expectAccessible } from './axe'
import { at360, at1280, dark, journey, lookAtDemo, openMore, profileOf, untilDrawn } from './harness'

async function copiedLink(page: Page): Promise<string> {
  await profileOf(page).grantPermissions(['clipboard-read', 'clipboard-write'])
  await page.getByRole('button', { name: 'Copy link' }).click()
  await page.getByText(/The link is copied/).waitFor()
  return page.evaluate(() => navigator.clipboard.readText())
}

/** What is kept on the device, as text. */
const storedText = (page: Page) =>
  page.evaluate(async () => {
    const names = await indexedDB.databases()
    const all: unknown[] = []
    for (const { name } of names) {
      const db = await new Promise<IDBDatabase>((resolve, reject) => {
        const asked = indexedDB.open(name ?? '')
        asked.onsuccess = () => resolve(asked.result)
        asked.onerror = () => reject(asked.error)
      })
      for (const store of db.objectStoreNames) {
        const rows = db.transaction(store).objectStore(store).getAll()
        await new Promise(resolve => {
          rows.onsuccess = resolve
        })
        all.push(rows.result)
      }
      db.close()
    }
    return JSON.stringify(all)
  })

const offered = (page: Page) => page.getByRole('heading', { name: 'Someone’s plan' })

describe('a shared link', () => {
  journey(
    'is previewed, kept as a trip of its own without a network, and never overwrites',
    async ({ openStored, site }) => {
      const page = await openStored()
      await lookAtDemo(page)
      await openMore(page)
      const link = await copiedLink(page)
      expect(link.startsWith(`${site.url}#plan=1.`)).toBe(true)

      await site.stop()
      await page.evaluate(hash => {
        location.hash = hash
      }, new URL(link).hash)
      await offered(page).waitFor()
      expect(page.url()).toBe(site.url)
      await expectAccessible(page)
      await page.getByRole('button', { name: 'Leave it' }).click()
      await page.getByRole('heading', { name: 'Trips and settings' }).waitFor()
      expect(await page.locator('.trips > li').count()).toBe(1)

      await page.goto(link)
      await page.reload()
      await page.evaluate(hash => {
        location.hash = hash
      }, new URL(link).hash)
      await offered(page).waitFor()
      await page.getByText(`: ${demo.trip.stops.length} stops, ${demo.gear.length} items, 3 packs.`).waitFor()
      await page.getByRole('button', { name: 'Keep it as a trip' }).click()
      await page.getByRole('heading', { name: 'Heaviest load' }).waitFor()
      await openMore(page)
      expect(await page.locator('.trips > li').count()).toBe(2)
    },
  )

  journey(
    'opened on a fresh device leaves the address and is nowhere until it is kept',
    async ({ open, openDemo, site }) => {
      const sender = await openDemo()
      await openMore(sender)
      const link = await copiedLink(sender)

      const page = await open(at1280())
      await page.goto('about:blank')
      await page.goto(link)
      await untilDrawn(page)
      await offered(page).waitFor()
      expect(page.url()).toBe(site.url)
      expect(await page.evaluate(() => location.hash)).toBe('')
      expect(await storedText(page)).not.toContain(demo.gear[0]!.name)
      // The person is left out unless the sender says otherwise.
      await page.getByText(/somebody of 70\.0\skg/).waitFor()
      await page.getByRole('button', { name: 'Keep it as a trip' }).click()
      await page.getByRole('heading', { name: 'Heaviest load' }).first().waitFor()
      await expect.poll(() => storedText(page)).toContain(demo.gear[0]!.name)
    },
  )

  journey(
    'that is damaged or hostile opens nothing and says why, in the browser’s own unpacker too',
    async ({ openDemo, site }) => {
      const page = await openDemo()
      await openMore(page)
      const hash = new URL(await copiedLink(page)).hash
      const bomb = await page.evaluate(async () => {
        const zeros = new Blob([new Uint8Array(5_000_000)]).stream()
        const packed = await new Response(zeros.pipeThrough(new CompressionStream('deflate-raw'))).bytes()
        const text = btoa(Array.from([...packed, 0, 0, 0, 0], byte => String.fromCharCode(byte)).join(''))
        return `#plan=1.${text.replaceAll('+', '-').replaceAll('/', '_').replaceAll('=', '')}`
      })
      for (const [fragment, message] of [
        [hash.slice(0, -20), /cut short or changed/],
        [`${hash.slice(0, 200)}A${hash.slice(201)}`, /cut short or changed/],
        [bomb, /more than 256 KiB/],
        ['#plan=2.AAAA', /newer Pack Reckoner/],
        [`#plan=1.${'A'.repeat(9000)}`, /at most 8,000/],
        ['#plan=1.%3Cimg%20src=x%3E', /cut short or changed/],
      ] as const) {
        await page.evaluate(to => {
          location.hash = to
        }, fragment)
        await page.getByText(message).waitFor()
        expect(page.url()).toBe(site.url)
        await page.getByRole('button', { name: 'Go on without it' }).click()
      }
      expect(await page.locator('.trips > li').count()).toBe(1)
    },
  )

  journey('can be copied by hand where the browser does not let a page copy', async ({ openDemo }) => {
    const page = await openDemo()
    await page.evaluate(() => {
      navigator.clipboard.writeText = () => Promise.reject(new DOMException('no leave', 'NotAllowedError'))
    })
    await openMore(page)
    await page.getByLabel('Leave out body mass, height, age and sex').uncheck()
    await page.getByText(/The link tells of you: 71\.0\skg, 174\scm, 38 years/).waitFor()
    await page.getByRole('button', { name: 'Copy link' }).click()
    const field = page.getByLabel(/copy the link from here/)
    expect(await field.inputValue()).toMatch(/#plan=1\./)
    await expectAccessible(page)
  })
})

describe('a code', () => {
  journey(
    'is black on white with a quiet zone in the dark too; a plan too large for one says so',
    async ({ openDemo }) => {
      const page = await openDemo({ ...at360(), ...dark })
      await openMore(page)
      await page.getByRole('button', { name: 'Show as a code' }).click()
      await page.getByText(/too large for a code.*1,200/).waitFor()

      await page.getByLabel('Open a plan file').setInputFiles({
        name: 'short.json',
        mimeType: 'application/json',
        buffer: Buffer.from(JSON.stringify({ ...demo, gear: demo.gear.slice(0, 4), packs: [] })),
      })
      await page.getByText('4 items').waitFor()
      await page.getByRole('button', { name: 'Show as a code' }).click()
      const code = page.getByRole('img', { name: /QR code/ })
      await code.waitFor()
      const drawn = await code.evaluate(svg => {
        const box = svg.getBoundingClientRect()
        const [x, , modules] = svg.getAttribute('viewBox')!.split(' ').map(Number)
        const [ground, dark] = [...svg.children].map(part => getComputedStyle(part).fill)
        return {
          modulePx: (box.width / modules!) * devicePixelRatio,
          quiet: -x!,
          ground,
          dark,
          right: box.right,
        }
      })
      expect(drawn).toMatchObject({ quiet: 4, ground: 'rgb(255, 255, 255)', dark: 'rgb(0, 0, 0)' })
      expect(drawn.modulePx).toBeGreaterThanOrEqual(3)
      expect(drawn.right).toBeLessThanOrEqual(360)
      await expectAccessible(page)
    },
  )
})
