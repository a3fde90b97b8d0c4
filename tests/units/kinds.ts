// Every kind of quantity, for tests that go through all; the type makes a missing one an error.
import type { Quantity } from '../../src/units'

const all: Record<Quantity, true> = {
  mass: true,
  volume: true,
  distance: true,
  climb: true,
  length: true,
  temperature: true,
  duration: true,
  speed: true,
  verticalSpeed: true,
  flow: true,
  count: true,
  share: true,
  number: true,
  money: true,
  density: true,
  energyDensity: true,
  gramsPerLitre: true,
  gramsPerKg: true,
}

export const kinds = Object.keys(all) as Quantity[]
