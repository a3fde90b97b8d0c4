// What a shared plan says of the person: all that the plan holds, or no more than the load they want to carry at most.

import { completePlan, type PlanDocument, STAND_IN_MASS_KG } from '../../plan'

/**
 * The plan without age, height and sex, and with a stand-in for the body mass. The limit stays and is written out:
 * its default depends on the age that is left out, and would rise for a child.
 */
export function withoutCarrier(document: PlanDocument): PlanDocument {
  const { carrier, trip } = completePlan(document)
  const shared = {
    ...document,
    carrier: { massKg: STAND_IN_MASS_KG, loadShareLimit: carrier.loadShareLimit },
  }
  // Under 14 years no ration follows energy, whatever the plan says; without the age it would.
  if (trip.meals.ration !== 'energy' || carrier.ageYears === null || carrier.ageYears >= 14) return shared
  return { ...shared, trip: { ...document.trip, meals: { ...document.trip.meals, ration: 'fixed' } } }
}
