// How this hiker walks, drinks and eats: defaults that say where they come from, open to be changed.

import { ChoiceField, QuantityField, ToggleField, useSystem } from '../../components/fields'
import { Why } from '../../components/why'
import { defaults, LIMITS, STAND_IN_MASS_KG } from '../../plan'
import { formatsIn } from '../../report'
import { kcalText, rationText, restingKcalOf } from '../../report/why'
import { actions, openTrip, reckoned } from '../../store'

export function Carrier() {
  const age = openTrip.value?.draft.carrier.ageYears ?? null
  const restingKcal = reckoned.value ? restingKcalOf(reckoned.value.plan) : null
  return (
    <section>
      <h3>Who carries</h3>
      <div class="fields">
        <QuantityField
          path="carrier/massKg"
          label="Body mass"
          kind="mass"
          limit={LIMITS.carrier.massKg}
          usual={STAND_IN_MASS_KG}
          usualFrom="a stand-in"
        />
        <QuantityField path="carrier/ageYears" label="Age" kind="number" limit={LIMITS.carrier.ageYears} />
        <QuantityField
          path="carrier/loadShareLimit"
          label="Carry at most"
          kind="share"
          limit={LIMITS.carrier.loadShareLimit}
          usual={defaults.loadShareLimitFor(age)}
          usualFrom={`of body mass, ${defaults.DEFAULT_ORIGINS.loadShareLimit}`}
        />
      </div>
      <details class="more">
        <summary>Height and sex (for energy)</summary>
        <div class="fields">
          <QuantityField
            path="carrier/heightCm"
            label="Height"
            kind="length"
            limit={LIMITS.carrier.heightCm}
          />
        </div>
        <ChoiceField
          path="carrier/sex"
          label="Sex"
          usual=""
          options={[
            { value: 'female', label: 'Female' },
            { value: 'male', label: 'Male' },
          ]}
        />
        {restingKcal === null ? null : (
          <div data-figures="why">
            <Why about={{ kind: 'resting-energy' }} figure={`Resting ${kcalText(restingKcal)} a day`} />
          </div>
        )}
      </details>
    </section>
  )
}

export function Water() {
  const fromHeat = openTrip.value?.draft.trip.water?.litresPerHour === 'from-heat'
  return (
    <details class="more section">
      <summary>
        <h3>Water</h3>
      </summary>
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
          ? 'In heat by the table of TB MED 507 (2003), below it by planning rates of ours, for who drinks most. Give the air under Weather. A rate to carry, not a drinking target.'
          : 'Room to carry, not a drinking target.'}
      </p>
      {fromHeat ? <HottestLeg /> : null}
      <div class="fields">
        {fromHeat ? null : (
          <QuantityField
            path="trip/water/litresPerHour"
            label="Drunk while walking"
            kind="flow"
            limit={LIMITS.water.litresPerHour}
            usual={defaults.WATER.litresPerHour}
            usualFrom={defaults.DEFAULT_ORIGINS.litresPerHour}
          />
        )}
        <QuantityField
          path="trip/water/campLitres"
          label="For a night in camp"
          kind="volume"
          limit={LIMITS.water.campLitres}
          usual={defaults.WATER.campLitres}
          usualFrom={defaults.DEFAULT_ORIGINS.campLitres}
        />
        <QuantityField
          path="trip/water/reserveLitres"
          label="Reserve"
          kind="volume"
          limit={LIMITS.water.reserveLitres}
          usual={defaults.WATER.reserveLitres}
          usualFrom={defaults.DEFAULT_ORIGINS.reserveLitres}
        />
      </div>
      <ToggleField
        path="trip/water/trustDoubtful"
        label="Count on doubtful sources"
        usual={defaults.WATER.trustDoubtful}
      />
    </details>
  )
}

/** The leg that asks for most in an hour stands for the rule; each leg answers for itself in its editor. */
function HottestLeg() {
  const { flow } = formatsIn(useSystem())
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
  const ration = openTrip.value?.draft.trip.meals?.ration
  const share = (field: 'breakfast' | 'trail' | 'supper', label: string) => (
    <QuantityField
      path={`trip/meals/${field}`}
      label={label}
      kind="share"
      limit={LIMITS.meals[field]}
      usual={defaults.MEALS[field]}
    />
  )
  return (
    <details class="more section">
      <summary>
        <h3>Food</h3>
      </summary>
      <ChoiceField
        path="trip/meals/ration"
        label="A day’s ration is"
        usual={defaults.MEALS.ration}
        options={[
          { value: 'fixed', label: 'As listed in the gear' },
          { value: 'energy', label: 'Scaled to each day’s energy' },
        ]}
      />
      <div class="fields">
        <QuantityField
          path="trip/meals/spareDays"
          label="Spare rations"
          kind="number"
          limit={LIMITS.meals.spareDays}
          usual={defaults.MEALS.spareDays}
          usualFrom={defaults.DEFAULT_ORIGINS.meals}
        />
        {ration === 'energy' ? (
          <QuantityField
            path="trip/meals/deficit"
            label="Energy to go without"
            kind="share"
            limit={LIMITS.meals.deficit}
            usual={defaults.MEALS.deficit}
          />
        ) : null}
      </div>
      <LargestRation />
      <ToggleField
        path="trip/meals/supperAfterEnd"
        label="The last supper is eaten after the end"
        usual={defaults.MEALS.supperAfterEnd}
      />
      <details class="more">
        <summary>Meals as shares of a day</summary>
        <div class="fields">
          {share('breakfast', 'Breakfast')}
          {share('trail', 'On the trail')}
          {share('supper', 'Supper')}
        </div>
        <p class="hint" data-figures="cited">
          Together they make 100 %. Empty ones count by {defaults.DEFAULT_ORIGINS.meals}.
        </p>
      </details>
    </details>
  )
}

export function Pace() {
  return (
    <details class="more section">
      <summary>
        <h3>Pace</h3>
      </summary>
      <div class="fields">
        <QuantityField
          path="trip/pace/flatKmh"
          label="On the flat"
          kind="speed"
          limit={LIMITS.pace.flatKmh}
          usual={defaults.PACE.flatKmh}
          usualFrom={defaults.DEFAULT_ORIGINS.pace}
        />
        <QuantityField
          path="trip/pace/climbMPerH"
          label="Climbing"
          kind="verticalSpeed"
          limit={LIMITS.pace.climbMPerH}
          usual={defaults.PACE.climbMPerH}
          usualFrom={defaults.DEFAULT_ORIGINS.pace}
        />
        <QuantityField
          path="trip/pace/descendMPerH"
          label="Going down"
          kind="verticalSpeed"
          limit={LIMITS.pace.descendMPerH}
          usual={defaults.PACE.descendMPerH}
          usualFrom={defaults.DEFAULT_ORIGINS.pace}
        />
      </div>
    </details>
  )
}
