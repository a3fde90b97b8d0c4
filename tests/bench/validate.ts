// Prints how far each equation lies from the values it is held to: source, standing, cases, largest deviation.
// Run with: npx tsx tests/bench/validate.ts

import { readFileSync } from 'node:fs'
import { cases, deviation } from '../published/cases'
import { driverPrefix, drivers } from '../published/drivers'
import { printTable } from './print-table'

interface Row {
  equation: string
  source: string
  standing: string
  cases: number
  published: number
  largestDeviation: number
  unit: string
  shareOfTolerance: number
}

const sources: Record<string, { standing: string }> = JSON.parse(
  readFileSync(new URL('../../data/sources.json', import.meta.url), 'utf8'),
)

const rows = new Map<string, Row>()
for (const case_ of cases) {
  const prefix = driverPrefix(case_.id)
  if (!prefix) throw new Error(`no equation answers ${case_.id}`)
  const driver = drivers[prefix]!
  const off = deviation(case_, driver.run)
  // Deviations in different units do not compare, so a row is an equation in one unit.
  const unit = case_.units.split(/[ [(]/)[0]!
  const key = `${driver.equation}|${driver.source}|${unit}`
  const row = rows.get(key) ?? {
    equation: driver.equation,
    source: driver.source,
    standing: sources[driver.source]?.standing ?? 'not registered',
    cases: 0,
    published: 0,
    largestDeviation: 0,
    unit,
    shareOfTolerance: 0,
  }
  row.cases += 1
  if (case_.kind === 'published') row.published += 1
  row.largestDeviation = Math.max(row.largestDeviation, off)
  if (case_.tolerance > 0) row.shareOfTolerance = Math.max(row.shareOfTolerance, off / case_.tolerance)
  rows.set(key, row)
}

const header = ['equation', 'source', 'standing', 'cases', 'published', 'largest deviation', 'of tolerance']
const table = [...rows.values()].map(row => [
  row.equation,
  row.source,
  row.standing,
  String(row.cases),
  String(row.published),
  `${row.largestDeviation.toPrecision(2)} ${row.unit}`,
  `${Math.round(100 * row.shareOfTolerance)} %`,
])
printTable(header, table)
console.log(`${cases.length} values in all`)
