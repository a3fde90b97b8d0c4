// What the command line tells of a plan beyond its Reckoning, and of two plans side by side.

import { mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, describe, expect, it } from 'vitest'
import { differences } from '../engine/agree'
import workedPlan from '../engine/fixtures/worked-plan.json'
import { planOf } from '../engine/plans'
import { reckoned } from '../engine/small-plans'
import { run } from './run-here'

const folder = mkdtempSync(join(tmpdir(), 'asked-'))
afterAll(() => rmSync(folder, { recursive: true }))

function file(name: string, content: unknown): string {
  const path = join(folder, name)
  writeFileSync(path, JSON.stringify(content))
  return path
}

const worked = file('worked.json', workedPlan)
const broken = file('broken.json', { ...workedPlan, carrier: { massKg: -1 } })
const expected = (plan: unknown) =>
  JSON.parse(JSON.stringify(reckoned(planOf(plan as Parameters<typeof planOf>[0]))))

describe('what each thing costs, what should be left, and two plans', () => {
  const home = {
    ...workedPlan,
    name: 'Lighter',
    gear: workedPlan.gear
      .filter(({ id }) => id !== 'staff')
      .map(item => (item.id === 'mat' ? { ...item, atHome: true, massKg: 0.5 } : item)),
  }
  const lighter = file('lighter.json', home)

  it('stands beside the Reckoning of every plan, and only where it is asked for', () => {
    const { status, stdout, stderr } = run(['--json', '--effects', '--from', '2', worked, lighter])
    expect({ status, stderr }).toEqual({ status: 0, stderr: '' })
    const [one, other] = stdout
      .trimEnd()
      .split('\n')
      .map(line => JSON.parse(line))
    expect(differences(one, expected(workedPlan), { relative: 0 })).toEqual([])
    const idsOf = (gear: { id: string }[]) => gear.map(({ id }) => id)
    expect(idsOf(one.effects)).toEqual(idsOf(workedPlan.gear))
    expect(idsOf(other.effects)).toEqual(idsOf(home.gear))
    expect(other.effects.find(({ id }: { id: string }) => id === 'mat')).toMatchObject({
      atHome: true,
      peakLoadKg: expect.closeTo(0.5, 9),
    })
    expect(one.onTheWay.loadKg).toBe(one.moments[4].kg.total)
    const { onTheWay, effects } = JSON.parse(run(['--json', worked]).stdout)
    expect([onTheWay, effects]).toEqual([undefined, undefined])
  })

  it('can be read: what takes the room first, what is left, and what a missed resupply asks', () => {
    const { status, plain } = run(['--effects', '--from', '1', lighter])
    expect(status).toBe(0)
    expect(plain).toMatch(/WHAT TAKES THE ROOM .*\n.* {2}−[\d.]+ kg, −[\d.]+ L\n/)
    expect(plain).toMatch(/\+0\.5 kg.* if taken along/)
    expect(plain).toMatch(/LEAVING Larch Spring\nFood +[\d.]+ rations, [\d.]+ kg\n/)
    expect(plain).toMatch(
      /IF A RESUPPLY IS MISSED\nFerry Village: [\d.]+ rations, [\d.]+ kg more from here\./,
    )
  })

  it('is refused for a stop that is not on the way, and used wrongly where it is no stop', () => {
    const last = workedPlan.trip.stops.length - 1
    const { status, stdout, errors } = run(['--json', '--from', String(last), worked])
    expect({ status, stdout }).toEqual({ status: 2, stdout: '' })
    expect(errors).toEqual([
      `trip.stops: --from ${last} is no stop on the way: name one from 1 to ${last - 1}`,
    ])
    for (const wrong of [['0'], ['-1'], ['1.5'], ['x'], ['']])
      expect(run(['--json', '--from', ...wrong, worked]).status).toBe(64)
  })

  it('tells two plans apart: only here, only there, changed, and what both come to', () => {
    const { status, stdout } = run(['--json', '--compare', worked, lighter])
    expect(status).toBe(0)
    const found = JSON.parse(stdout)
    const nameOf = (id: string) => workedPlan.gear.find(item => item.id === id)!.name
    expect([found.onlyBefore, found.onlyAfter]).toEqual([[nameOf('staff')], []])
    expect(found.changed).toEqual([
      {
        name: nameOf('mat'),
        fields: [
          expect.objectContaining({ what: 'mass', after: expect.stringMatching(/^500.g$/) }),
          { what: 'being left at home', before: 'no', after: 'yes' },
        ],
      },
    ])
    const load = found.figures.find(({ what }: { what: string }) => what === 'Heaviest load')
    const [before, after] = [workedPlan, home].map(plan => expected(plan).need.peakLoadFullWaterKg)
    expect(load).toMatchObject({ before, after, change: after - before })
    expect(found.answers).toHaveLength(expected(workedPlan).packs.length)
    expect(run(['--compare', worked, lighter]).plain).toMatch(/CHANGED\n.*: mass .* → 500 g; /)
    for (const wrong of [[worked], [worked, lighter, worked], ['--effects', worked, lighter]])
      expect(run(['--compare', ...wrong]).status).toBe(64)
    expect(run(['--compare', worked, broken])).toMatchObject({ status: 2, stdout: '' })
  })
})
