// What counts until the hiker says otherwise, by where it comes from: every row of the catalogue of fields that has a
// label, a usual value and an origin.

import { defaults, FIELDS, type FieldRow } from '../../plan'
import { formatQuantity, type System } from '../../units'
import { formatsIn } from '../formats'

export interface Default {
  label: string
  value: string
}

export interface Defaults {
  origin: string
  rows: Default[]
}

const PARTS = ['pace', 'water', 'meals', 'weather', 'carrier', 'settings'] as const

export function defaultsByOrigin(system: System): Defaults[] {
  const found = new Map<string, Default[]>()
  for (const part of PARTS)
    for (const row of Object.values<FieldRow>(FIELDS[part])) {
      const value = usualText(row, system)
      if (value === null || !row.label || !row.origin) continue
      const rows = found.get(row.origin) ?? []
      found.set(row.origin, [...rows, { label: row.label, value }])
    }
  return [...found].map(([origin, rows]) => ({ origin, rows }))
}

/** Null where nothing counts of itself. */
function usualText(row: FieldRow, system: System): string | null {
  if (row === FIELDS.carrier.loadShareLimit) return shareText(system)
  if (row.as !== 'amount' || typeof row.usual !== 'number') return null
  const { kind, usual, unit } = row
  if (kind === 'mass' && !row.fine) return formatsIn(system).kg(usual)
  const text = formatQuantity(kind, usual, { system })
  return kind === 'number' ? `${text} ${unit}` : text
}

/** The one default here that depends on the hiker. */
function shareText(system: System): string {
  const [adult, young] = [null, 1].map(age =>
    formatQuantity('share', defaults.loadShareLimitFor(age), { system, digits: 0 }),
  )
  return `${adult}, young people ${young}`
}
