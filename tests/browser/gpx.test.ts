// The route decides: a track file becomes the stops of a trip, on a small phone, with no network.

import type { Page } from 'playwright-core'
import { describe, expect } from 'vitest'
import { go, journey, saved, untilDrawn } from './harness'
import { openLine } from './lines'
import { expectKeepsRules } from './sizes'

/** A metre of latitude, degrees: near enough for an invented way due north. */
const METRE = 1 / 111_200
const latAt = (m: number) => (46 + m * METRE).toFixed(7)
const waypoint = (m: number, name: string) => `<wpt lat="${latAt(m)}" lon="7"><name>${name}</name></wpt>`

/** An invented way over a hill: 3 km, a point every 20 m, 400 m up at most and a little down again. */
const points = Array.from({ length: 151 }, (_, i) => {
  const ele = 600 + 400 * Math.sin((i / 150) * 2.2)
  return `<trkpt lat="${latAt(i * 20)}" lon="7"><ele>${ele.toFixed(1)}</ele></trkpt>`
})
const walk = `<?xml version="1.0" encoding="UTF-8"?>
<gpx version="1.1" creator="test" xmlns="http://www.topografix.com/GPX/1/1">
${waypoint(800, 'Sheep gate')}${waypoint(1600, 'Larch Well')}
<trk><name>Over the hill</name><trkseg>${points.join('\n')}</trkseg></trk></gpx>`

const withDoctype = `<?xml version="1.0"?><!DOCTYPE gpx [<!ENTITY a "b">]>${walk.slice(walk.indexOf('<gpx'))}`

const file = (name: string, text: string) => ({
  name,
  mimeType: 'application/gpx+xml',
  buffer: Buffer.from(text),
})

const names = (page: Page) => page.locator('.stops .name').allTextContents()

async function chooseFile(page: Page, name: string, text: string) {
  await page.getByLabel('Choose a track file (GPX)').setInputFiles(file(name, text))
}

/** Takes over the stops of the walk in two days, from where "Stops from a track" can be seen. */
async function importWalk(page: Page) {
  await page.getByRole('button', { name: 'Stops from a track (GPX)' }).click()
  await chooseFile(page, 'hill.gpx', walk)
  const panel = page.getByRole('region', { name: 'Stops from a track file' })
  await panel.locator('.name', { hasText: 'Over the hill' }).waitFor()
  await panel.getByRole('radio', { name: 'Days', exact: true }).check()
  await panel.getByRole('textbox', { name: 'Days' }).fill('2')
  await panel.getByText('2 days of about').waitFor()
  return panel
}

describe('a track file', () => {
  journey(
    'becomes the stops and the terrain of a trip, with the server gone',
    async ({ openStored, site }) => {
      const page = await openStored()
      await site.stop()
      await page.getByRole('button', { name: 'Plan a trip' }).click()
      const panel = await importWalk(page)
      await panel.getByRole('button', { name: 'Use these stops' }).click()
      await page.getByRole('heading', { name: 'Stops', exact: true }).waitFor()
      expect(await names(page)).toEqual(['Start', 'Sheep gate', 'Larch Well', 'End'])
      expect(await page.evaluate(() => document.activeElement?.textContent)).toBe('Stops')

      await go(page, 'Need')
      const line = page.locator('.load-line')
      await line.locator('.terrain .ridge').waitFor()
      expect(await line.getByRole('img').getAttribute('aria-label')).toMatch(
        /terrain, from 600\sm to 1000\sm\.$/,
      )
      await openLine(page, 'Figures')
      await page.getByText('The same as a table').click()
      await page.getByRole('columnheader', { name: 'Elevation' }).waitFor()

      // It is kept: a reload without a network draws it again.
      await saved(page)
      await page.reload()
      await untilDrawn(page)
      await page.locator('.terrain .ridge').waitFor()

      await go(page, 'Trip')
      await page.getByRole('button', { name: /^Undo/ }).click()
      await page.getByRole('button', { name: 'Make the stops' }).waitFor()
      await go(page, 'Need')
      await page.getByText('the stops have changed since the track was read').waitFor()
      expect(await page.locator('.terrain').count()).toBe(0)
    },
  )

  journey('with a document type is refused in words, and nothing has changed', async ({ openDemo }) => {
    const page = await openDemo()
    await go(page, 'Trip')
    await expect.poll(async () => (await names(page)).length).toBeGreaterThan(2)
    const before = await names(page)
    await page.getByText('Start over', { exact: true }).click()
    await page.getByRole('button', { name: 'Stops from a track (GPX)' }).click()
    await chooseFile(page, 'odd.gpx', withDoctype)
    const problem = page.locator('.gpx .problem')
    await problem.waitFor()
    expect(await problem.textContent()).toMatch(/^odd\.gpx: .*DOCTYPE/)
    await page.getByText('Your trip is as it was.').waitFor()
    expect(await names(page)).toEqual(before)
    await page.getByRole('button', { name: 'Leave without changes' }).click()
    expect(await names(page)).toEqual(before)
    await page.getByRole('button', { name: /^Undo: Add trip/ }).waitFor()
  })
})

describe('what the route decides', () => {
  journey('keeps the rules of the house', async ({ open }) => {
    const page = await open()
    await page.getByRole('button', { name: 'Plan a trip' }).click()
    const panel = await importWalk(page)
    await expectKeepsRules(page, { state: 'the panel', touchedWithin: '.gpx' })
    await panel.getByRole('button', { name: 'Use these stops' }).click()
    await page.getByRole('heading', { name: 'Stops', exact: true }).waitFor()
    await go(page, 'Need')
    await openLine(page, 'Water between sources')
    await page.locator('.stretch').getByText('With water at').waitFor()
    await page.locator('.terrain .ridge').waitFor()
    await expectKeepsRules(page, { state: 'the need', touchedWithin: '.stretches' })
  })
})
