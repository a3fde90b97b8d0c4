// The panel that turns a track file into stops, wired to the real store; its worker runs on the test's own thread.

import { cleanup, fireEvent, render, screen, waitFor } from '@testing-library/preact'
import { h } from 'preact'
import { act } from 'preact/test-utils'
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest'
import { measureGpx } from '../../src/files/gpx/job'
import { type DraftStop, emptyDraft } from '../../src/plan'
import { Track } from '../../src/screens/backup/Track'
import { GpxImport } from '../../src/screens/trip/GpxImport'
import { actions, openTrip, tripList } from '../../src/store'
import { gpx, point, track } from '../files/tracks'

const worker = { answers: true }

class FakeWorker {
  onmessage: ((event: { data: unknown }) => void) | null = null
  terminate() {}
  async postMessage({ file }: { file: Blob }) {
    if (worker.answers) this.onmessage?.({ data: { kind: 'done', result: await measureGpx(file) } })
  }
}

const hut = '<wpt lat="46.1" lon="7"><name>Hut</name></wpt>'
const way = (name: string) =>
  `<trk><name>${name}</name><trkseg>${Array.from({ length: 21 }, (_, i) => point(46 + i / 100, 7)).join('')}</trkseg></trk>`
const high = (lat: number, ele: number) => `<trkpt lat="${lat}" lon="7"><ele>${ele}</ele></trkpt>`
const long = `<trk><trkseg>${Array.from({ length: 51 }, (_, i) => high(46 + i / 100, 500 + 2 * i)).join('')}</trkseg></trk>`
const before: DraftStop[] = [
  { id: 'a', name: 'Old start' },
  { id: 'b', name: 'Old end', leg: { km: 3 } },
]
const stops = () => openTrip.value?.draft.trip.stops ?? []

beforeEach(() => {
  worker.answers = true
  vi.stubGlobal('Worker', FakeWorker)
  act(() => void actions.createTrip({ ...emptyDraft(), trip: { stops: before } }))
})
afterEach(cleanup)

function openFields(of: string) {
  const details = screen.getByText(of, { exact: false, selector: 'summary .unseen' }).closest('details')!
  details.open = true
  fireEvent(details, new Event('toggle'))
}

function choose(text: string) {
  const onDone = vi.fn()
  render(h(GpxImport, { onDone }))
  const input = screen.getByLabelText('Choose a track file (GPX)')
  fireEvent.change(input, { target: { files: [new File([text], 'walk.gpx')] } })
  return onDone
}

async function splitInto(days: string) {
  fireEvent.click(await screen.findByLabelText('Days', { selector: 'input[type=radio]' }))
  fireEvent.input(screen.getByLabelText('Days', { selector: 'input[type=text]' }), {
    target: { value: days },
  })
}

describe('a track for a new trip', () => {
  const trips = () => tripList.value.length
  const newTrip = (text: string) => {
    render(h(Track, { file: new File([text], 'walk.gpx'), onDone: vi.fn() }))
    fireEvent.click(screen.getByText('For a new trip'))
  }

  it('makes none when the track is refused', async () => {
    const before = trips()
    newTrip('<gpx><trk>')
    await screen.findByText('No trip was made.')
    expect(trips()).toBe(before)
  })

  it('makes one of its stops, in one step', async () => {
    const before = trips()
    newTrip(gpx(hut + way('Ridge')))
    fireEvent.click(await screen.findByText('Use these stops'))
    expect(trips()).toBe(before + 1)
    expect(stops().map(({ name }) => name)).toEqual(['Start', 'Hut', 'End'])
    expect(openTrip.value?.draft.name).toBe('Ridge')
    act(() => actions.undo())
    expect(trips()).toBe(before)
  })
})

describe('the track panel', () => {
  it('replaces the stops in one undoable step, with what was said of them, and hands the profile over', async () => {
    const onDone = choose(gpx(hut + way('Ridge')))
    await splitInto('2')
    // What is closed holds no fields: a long track has hundreds of places.
    expect(screen.queryByLabelText('Sure')).toBeNull()
    openFields('of Hut')
    fireEvent.click(await screen.findByLabelText('Sure'))
    fireEvent.click(screen.getByText('Use these stops'))
    expect(stops().map(({ name, nights, water }) => [name, nights, water])).toEqual([
      ['Start', undefined, 'none'],
      ['Hut', 1, 'sure'],
      ['End', undefined, 'none'],
    ])
    expect(stops()[1]!.leg).toEqual({ km: expect.closeTo(11.1, 1) })
    expect(onDone).toHaveBeenCalledWith({ profile: expect.any(Array) })
    act(() => actions.undo())
    expect(stops()).toEqual(before)
  })

  it('draws the first of many places, and uses all of them', async () => {
    const many = Array.from(
      { length: 70 },
      (_, i) => `<wpt lat="${46.002 + i / 400}" lon="7"><name>Place ${i}</name></wpt>`,
    )
    choose(gpx(many.join('') + way('Ridge')))
    const more = await screen.findByRole('button', { name: /^Show \d+ more stops$/ })
    expect(document.querySelectorAll('.gpx-stop')).toHaveLength(50)
    fireEvent.click(screen.getByText('Use these stops'))
    expect(more.isConnected && stops().length).toBeGreaterThan(70)
  })

  it('proposes days by hours, and says from which even days are longer than that', async () => {
    choose(gpx(long))
    expect(await screen.findByText(/^3 days of about 4.h 4\d.min of walking/)).toBeTruthy()
    await splitInto('1')
    expect(screen.getByText(/^1 day of about 1[34].h/)).toBeTruthy()
    fireEvent.click(screen.getByText(/^Split by at most 6.h/))
    expect(screen.getByText(/^3 days of about/)).toBeTruthy()
    expect(screen.queryByText(/^Split by at most/)).toBeNull()
  })

  it('draws the elevation at once, with the nights that are proposed', async () => {
    choose(gpx(long))
    const picture = await screen.findByRole('img', { name: /^Elevation profile of 55\.6/ })
    expect(picture.getAttribute('aria-label')).toMatch(/from 500.m to 600.m.*Nights at .*Camp 1.*; .*Camp 2/)
  })

  it('steps through the nights at a stop, and takes them typed', async () => {
    choose(gpx(hut + way('Ridge')))
    await splitInto('2')
    openFields('of Hut')
    const more = await screen.findByLabelText('One more: Nights')
    act(() => void fireEvent.click(more))
    act(() => void fireEvent.click(more))
    const field = screen.getByLabelText<HTMLInputElement>('Nights')
    expect(field.value).toBe('3')
    fireEvent.input(field, { target: { value: '2' } })
    fireEvent.click(screen.getByText('Use these stops'))
    expect(stops()[1]).toMatchObject({ name: 'Hut', nights: 2 })
  })

  it('names a trip that has no name, and keeps the name of one that has', async () => {
    choose(gpx(way('Ridge')))
    fireEvent.click(await screen.findByText('Use these stops'))
    expect(openTrip.value?.draft.name).toBe('Ridge')
    act(() => actions.undo())
    expect(openTrip.value?.draft.name).toBeUndefined()
    cleanup()
    act(() => actions.setField('name', 'My walk', null))
    choose(gpx(way('Ridge')))
    fireEvent.click(await screen.findByText('Use these stops'))
    expect(openTrip.value?.draft.name).toBe('My walk')
  })

  it('gives no name where the file has none', async () => {
    choose(gpx(way('')))
    fireEvent.click(await screen.findByText('Use these stops'))
    expect(openTrip.value?.draft.name).toBeUndefined()
  })

  it('says that a file without elevation leaves the climb empty', async () => {
    choose(gpx(way('Ridge')))
    expect(
      await screen.findByText('No elevation in this file: climb and descent are left empty.'),
    ).toBeTruthy()
  })

  it('lets one of several tracks be chosen, and a stop be dropped', async () => {
    choose(gpx(hut + track(point(10, 10), point(10.1, 10)) + way('Ridge')))
    fireEvent.change(await screen.findByLabelText('Which track'), { target: { value: '1' } })
    await splitInto('1')
    fireEvent.click(screen.getByLabelText('Keep Hut'))
    fireEvent.click(screen.getByText('Use these stops'))
    expect(stops().map(stop => stop.name)).toEqual(['Start', 'End'])
  })

  it('says why a file is refused, and changes nothing', async () => {
    choose('<!DOCTYPE html><html>')
    expect(await screen.findByText(/walk\.gpx: This is a web page, not a GPX file/)).toBeTruthy()
    expect(screen.getByText('Your trip is as it was.')).toBeTruthy()
    expect(stops()).toEqual(before)
  })

  it('can be cancelled while it reads, and then takes another file', async () => {
    worker.answers = false
    choose(gpx(way('Ridge')))
    fireEvent.click(await screen.findByText('Cancel'))
    await waitFor(() => expect(screen.getByLabelText('Choose a track file (GPX)')).toBeTruthy())
    expect(stops()).toEqual(before)
  })

  it('refuses a number of days that cannot be, by its limit, and offers no stops for it', async () => {
    choose(gpx(way('Ridge')))
    await splitInto('0')
    expect(screen.getByText('Days: write a whole number from 1 to 401.')).toBeTruthy()
    expect(screen.queryByText('Use these stops')).toBeNull()
  })
})
