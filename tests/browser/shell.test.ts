// The shell of the app: it installs, it needs no network once stored, a new release waits until it is let in.
import { readdir, readFile, rm } from 'node:fs/promises'
import { join } from 'node:path'
import type { Browser } from 'playwright-core'
import { describe, expect } from 'vitest'
import { expectAccessible } from './axe'
import { secondBuild, secondMark } from './deploy'
import {
  at360,
  at1280,
  built,
  journey,
  lookForUpdate,
  reloadFromStore,
  runClockUntil,
  untilDrawn,
  untilStored,
} from './harness'
import type { Site } from './server'
import { tooWide } from './sizes'

/** Fixed for ever: another id would be another app to every device that has it installed. */
const appId = 'pack-reckoner'

describe('installing', () => {
  journey('the browser finds nothing that stands in the way', async ({ openOnDisk, site }) => {
    const page = await openOnDisk()
    const session = await page.context().newCDPSession(page)
    const manifest = await session.send('Page.getAppManifest')
    expect(manifest.errors).toEqual([])
    expect(JSON.parse(manifest.data ?? '').name).toBe('Pack Reckoner')
    const { installabilityErrors } = await session.send('Page.getInstallabilityErrors')
    expect(installabilityErrors).toEqual([])
    const identity = await session.send('Page.getAppId')
    expect(identity.appId).toBe(new URL(appId, new URL(site.url).origin).href)
  })

  journey('the maskable icon is opaque and keeps its art inside the safe circle', async ({ open }) => {
    const page = await open()
    const { opaque, reach } = await page.evaluate(async () => {
      const image = await createImageBitmap(await (await fetch('./maskable-512.png')).blob())
      const { width, height } = image
      const pen = new OffscreenCanvas(width, height).getContext('2d')!
      pen.drawImage(image, 0, 0)
      const { data } = pen.getImageData(0, 0, width, height)
      let [opaque, reach] = [true, 0]
      for (let i = 0; i < data.length; i += 4) {
        const [x, y] = [(i / 4) % width, Math.floor(i / 4 / width)]
        if (data[i + 3] !== 255) opaque = false
        const isArt = [0, 1, 2].some(part => Math.abs(data[i + part]! - data[part]!) > 8)
        if (isArt) reach = Math.max(reach, Math.hypot(x + 0.5 - width / 2, y + 0.5 - height / 2) / width)
      }
      return { opaque, reach }
    })
    expect(opaque).toBe(true)
    expect(reach).toBeGreaterThan(0.3)
    expect(reach).toBeLessThanOrEqual(0.4)
  })
})

/** A page whose script is held back until it is released. */
async function withoutScript(browser: Browser, site: Site) {
  const html = await readFile(join(built, 'index.html'), 'utf8')
  const script = /src="\.\/(assets\/index-[^"]+)"/.exec(html)![1]!
  const context = await browser.newContext(at360())
  return { context, page: await context.newPage(), release: site.hold(script) }
}

describe('the first page', () => {
  journey(
    'stands before any script has come, and does what was chosen and tapped last',
    async ({ browser, site }) => {
      const { page, context, release } = await withoutScript(browser, site)
      await page.goto(site.url, { waitUntil: 'commit' })
      await page.getByRole('radio', { name: 'US customary' }).check()
      await page.getByRole('button', { name: 'Plan a trip' }).click()
      await page.getByRole('button', { name: 'Look at a demo trip' }).click()
      expect(await page.locator('#opening').count()).toBe(1)
      release()
      await page.getByRole('heading', { name: 'Heaviest load' }).waitFor()
      expect(await page.getByRole('main').count()).toBe(1)
      await page
        .getByText(/\d\slb/)
        .first()
        .waitFor()
      await context.close()
    },
  )

  journey('does not flash by where something else is opened', async ({ browser, site }) => {
    const { page, context, release } = await withoutScript(browser, site)
    await page.goto(`${site.url}#a-link`, { waitUntil: 'commit' })
    await page.locator('#opening').waitFor({ state: 'attached' })
    expect(await page.getByRole('main').isVisible()).toBe(false)
    release()
    await page.getByRole('main').waitFor()
    await context.close()
  })
})

describe('without a network', () => {
  journey(
    'the app opens again with the server gone, and asks nobody for anything',
    async ({ openStored, site }) => {
      const page = await openStored()
      await site.stop()
      expect(await reloadFromStore(page)).toEqual([])
      expect(await page.title()).toBe('Pack Reckoner')
    },
  )

  journey('the other screens are fetched once, with all that is stored', async ({ browser, site }) => {
    const context = await browser.newContext(at360())
    const page = await context.newPage()
    const release = site.hold('sw.js')
    const forGear = () => site.asked.filter(path => path.includes('/gear-'))
    await page.clock.install()
    await page.goto(site.url)
    await untilDrawn(page)
    await page.clock.runFor(10_000)
    release()
    await untilStored(page)
    const fromStore: string[] = []
    page.on('response', response => {
      if (response.fromServiceWorker()) fromStore.push(response.url())
    })
    await runClockUntil(page, () => fromStore.some(url => url.includes('/gear-')))
    expect(forGear()).toEqual([...new Set(forGear())])
    await context.close()
  })

  journey('any address below the app leads to it', async ({ openStored, site }) => {
    const page = await openStored()
    await site.stop()
    await page.goto(`${site.url}?from=a-link#/anywhere`)
    await untilDrawn(page)
    await page.goto(`${site.url}some/where`)
    await untilDrawn(page)
    expect(page.url()).toBe(site.url)
  })
})

describe('a new release', () => {
  journey('waits beside the one in use, whose parts go on working', async ({ openStored, site }) => {
    const second = await secondBuild(built)
    try {
      const page = await openStored()
      site.deploy(second.folder)
      await lookForUpdate(page)
      expect(await reloadFromStore(page)).toEqual([])
      expect(await page.locator(secondMark).count()).toBe(0)
    } finally {
      await second.remove()
    }
  })
})

describe('a new release of which a part is missing', () => {
  journey('is not let in by a host that answers with a page for it', async ({ openStored, site }) => {
    const second = await secondBuild(built)
    try {
      const page = await openStored()
      const [part] = (await readdir(join(second.folder, 'assets'))).filter(name =>
        name.endsWith('-second.js'),
      )
      await rm(join(second.folder, 'assets', part!))
      site.hideMissing()
      site.deploy(second.folder)
      // The browser fetches the new worker, which finds that what it has got is not what it is to store.
      const ended = page.evaluate(async () => {
        const registration = (await navigator.serviceWorker.getRegistration())!
        const installing = new Promise<ServiceWorker>(resolve =>
          registration.addEventListener('updatefound', () => resolve(registration.installing!)),
        )
        await registration.update()
        const worker = await installing
        while (worker.state === 'installing')
          await new Promise(resolve => worker.addEventListener('statechange', resolve, { once: true }))
        return worker.state
      })
      expect(await ended).toBe('redundant')
      expect(await reloadFromStore(page)).toEqual([])
      expect(await page.locator(secondMark).count()).toBe(0)
    } finally {
      await second.remove()
    }
  })
})

describe('letting a new release in', () => {
  journey('keeps what was typed a moment before', async ({ openStored, site }) => {
    const second = await secondBuild(built)
    try {
      const page = await openStored()
      await page.getByRole('button', { name: 'Plan a trip' }).click()
      site.deploy(second.folder)
      await lookForUpdate(page)
      await page.getByText('A newer version is ready').waitFor()
      await page.getByLabel('Name of the trip').fill('Over the moor')
      await page.getByRole('button', { name: 'Use it now' }).click()
      await page.locator(secondMark).waitFor({ state: 'attached' })
      await untilDrawn(page)
      expect(await page.getByLabel('Name of the trip').inputValue()).toBe('Over the moor')
    } finally {
      await second.remove()
    }
  })
})

describe('the first page', () => {
  for (const [name, options] of [
    ['on a small phone', at360()],
    ['on a desk', at1280()],
  ] as const)
    journey(`breaks no accessibility rule and fits the width ${name}`, async ({ open }) => {
      const page = await open(options)
      await expectAccessible(page)
      expect(await tooWide(page)).toBeLessThanOrEqual(0)
    })

  journey('says what it is and what it needs where JavaScript is off', async ({ browser, site }) => {
    const context = await browser.newContext({ ...at360(), javaScriptEnabled: false })
    const page = await context.newPage()
    await page.goto(site.url)
    await page.getByRole('heading', { name: 'Pack Reckoner' }).waitFor()
    expect(await page.locator('noscript').textContent()).toContain('Switch it on')
    await context.close()
  })
})
