// How this hiker walks, drinks and eats: defaults that say where they come from, open to be changed.

import { Field, useFormats, useSystem } from '../../components/fields'
import { later } from '../../components/frame'
import { Why } from '../../components/why'
import { addPerson, defaults, FIELDS, STAND_IN_MASS_KG } from '../../plan'

import { kcalText, rationText } from '../../report/why'
import { actions, newId, openTrip, person, reckoned } from '../../store'
import { counted, formatQuantity } from '../../units'
import { Fold } from './Fold'

const People = later(async () => (await import('../party')).People)

export function Carrier() {
  if (person.value !== null) return <People />
  return <LoneHiker />
}

function LoneHiker() {
  const age = openTrip.value?.draft.carrier.ageYears ?? null
  const result = reckoned.value?.reckoned
  const restingKcal = (result?.ok && result.working.body?.restingKcal) || null
  return (
    <section>
      <h3>Who carries</h3>
      <div class="fields">
        <Field path="carrier/massKg" usual={STAND_IN_MASS_KG} usualFrom="a stand-in" />
        <Field path="carrier/ageYears" />
        <Field
          path="carrier/loadShareLimit"
          usual={defaults.loadShareLimitFor(age)}
          usualFrom={`of body mass, ${FIELDS.carrier.loadShareLimit.origin}`}
        />
      </div>
      <details class="more">
        <summary>Height and sex (for energy)</summary>
        <div class="fields">
          <Field path="carrier/heightCm" />
        </div>
        <Field path="carrier/sex" />
        {restingKcal === null ? null : (
          <div data-figures="why">
            <Why about={{ kind: 'resting-energy' }} figure={`Resting ${kcalText(restingKcal)} a day`} />
          </div>
        )}
      </details>
      <button
        type="button"
        class="quiet"
        onClick={() => actions.edit('Walk with somebody', draft => addPerson(draft, newId()))}
      >
        Walk with somebody
      </button>
    </section>
  )
}

export function Water() {
  const formats = useFormats()
  const { litresPerHour: rate, campLitres } = { ...defaults.WATER, ...openTrip.value?.draft.trip.water }
  const fromHeat = rate === 'from-heat'
  const says = `${fromHeat ? 'by heat' : formats.flow(rate)}, ${formats.water(campLitres)} a night`
  return (
    <Fold title="Water" says={says}>
      <label class="toggle">
        <input
          type="checkbox"
          checked={fromHeat}
          onChange={event =>
            actions.setField(
              'trip/water/litresPerHour',
              event.currentTarget.checked ? 'from-heat' : undefined,
              null,
            )
          }
        />
        <span>Work the hourly rate out from heat and effort</span>
      </label>
      <p class="hint" data-figures="cited">
        {fromHeat
          ? 'In heat: the table of TB MED 507 (2003). Below that: our planning rates. Both for people who drink most. Give the air under Weather. Room to carry, not a drinking target.'
          : 'Room to carry, not a drinking target.'}
      </p>
      {fromHeat ? <HottestLeg /> : null}
      <div class="fields">
        {fromHeat ? null : <Field path="trip/water/litresPerHour" />}
        <Field path="trip/water/campLitres" />
        <Field path="trip/water/reserveLitres" />
      </div>
      <Field path="trip/water/trustDoubtful" />
    </Fold>
  )
}

/** The leg that asks for most in an hour stands for the rule; each leg answers for itself in its editor. */
function HottestLeg() {
  const { flow } = useFormats()
  const open = reckoned.value
  if (!open?.reckoned.ok) return null
  const rates = open.reckoned.reckoning.legs.map(({ litresPerHour }) => litresPerHour)
  const leg = rates.indexOf(Math.max(...rates))
  return (
    <div data-figures="why">
      <Why
        about={{ kind: 'leg-water', leg }}
        figure={`At most ${flow(rates[leg]!)}, to ${open.plan.trip.stops[leg + 1]!.name}`}
      />
    </div>
  )
}

/** The day that eats most. */
function LargestRation() {
  const open = reckoned.value
  if (!open?.reckoned.ok || open.plan.trip.meals.ration !== 'energy') return null
  const rations = open.reckoned.reckoning.days.map(day => day.ration)
  const day = rations.indexOf(Math.max(...rations))
  return (
    <div data-figures="why">
      <Why
        about={{ kind: 'ration', day }}
        figure={`Day ${day + 1} eats most: ${rationText(rations[day]!)}`}
      />
    </div>
  )
}

export function Food() {
  const { ration, spareDays } = { ...defaults.MEALS, ...openTrip.value?.draft.trip.meals }
  const says = `${ration === 'energy' ? 'by energy, ' : ''}${counted(spareDays, 'spare ration')}`
  return (
    <Fold title="Food" says={says}>
      <Field path="trip/meals/ration" />
      <div class="fields">
        <Field path="trip/meals/spareDays" />
        {ration === 'energy' ? <Field path="trip/meals/deficit" /> : null}
      </div>
      <LargestRation />
      <Field path="trip/meals/supperAfterEnd" />
      <details class="more">
        <summary>Meals as shares of a day</summary>
        <div class="fields">
          <Field path="trip/meals/breakfast" />
          <Field path="trip/meals/trail" />
          <Field path="trip/meals/supper" />
        </div>
        <p class="hint" data-figures="cited">
          Together they make 100 %. Empty ones count by {FIELDS.meals.spareDays.origin}.
        </p>
      </details>
    </Fold>
  )
}

export function Pace() {
  const system = useSystem()
  const { flatKmh, climbMPerH } = { ...defaults.PACE, ...openTrip.value?.draft.trip.pace }
  const says = `${formatQuantity('speed', flatKmh, { system })}, up ${formatQuantity('verticalSpeed', climbMPerH, { system })}`
  return (
    <Fold title="Pace" says={says}>
      <div class="fields">
        <Field path="trip/pace/flatKmh" />
        <Field path="trip/pace/climbMPerH" />
        <Field path="trip/pace/descendMPerH" />
      </div>
    </Fold>
  )
}
