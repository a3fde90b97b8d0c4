// What counts where nothing is said stands once, in plan/defaults.ts: a form that repeats the value would part from it.

import { readdirSync, readFileSync } from 'node:fs'
import { expect, test } from 'vitest'

const screens = new URL('../src/screens/', import.meta.url)
const forms = readdirSync(screens, { recursive: true, encoding: 'utf8' }).filter(name =>
  name.endsWith('.tsx'),
)

test('no form writes a usual number or switch of its own', () => {
  expect(forms.length).toBeGreaterThan(50)
  const repeated = forms.filter(name =>
    /\busual=\{(?:true|false|[\d.]+)\}/.test(readFileSync(new URL(name, screens), 'utf8')),
  )
  expect(repeated).toEqual([])
})
