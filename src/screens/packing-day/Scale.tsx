// The packed pack on the scale, beside what is calculated, and the difference shared out over what is guessed.

import { QuantityField, SelectOne } from '../../components/fields'
import { ToField, Why } from '../../components/why'
import { TRIP_LOG_LIMITS, withSpread, withWeighedIn } from '../../plan'
import type { Reckoning } from '../../reckon'
import type { Formats } from '../../report'
import {
  agrees,
  causesOf,
  differenceText,
  sharedText,
  startWater,
  unexplained,
  type Weighing,
  weighingLines,
  weighingOf,
} from '../../report/packing-day'
import { actions, type OpenReckoned, openTrip } from '../../store'
import { takenSetup, takesOf } from './taken'

interface ScaleProps {
  open: OpenReckoned
  reckoning: Reckoning
  formats: Formats
}

export function Scale({ open, reckoning, formats }: ScaleProps) {
  const draft = openTrip.value!.draft
  const log = draft.log ?? {}
  const { packs } = reckoning
  const setup = takenSetup(draft, open, packs)
  const asked = { plan: open.plan, reckoning, log, setup }
  const weighing = weighingOf(asked)
  // As it is shown: the field offers no more digits than anybody reads off a bottle.
  const water = Number(startWater(reckoning).toFixed(1))
  return (
    <section aria-labelledby="scale">
      <h3 id="scale">On the scale</h3>
      {packs.length > 0 ? (
        <SelectOne
          label="Weighed in"
          options={[
            { value: '', label: 'No pack: only what goes in' },
            ...packs.map(({ name, setup }, i) => ({ value: String(i), label: `${name}, ${setup}` })),
          ]}
          chosen={setup === null || log.weighedBare ? '' : String(setup)}
          onChoose={value => {
            const pack = value === '' ? undefined : packs[Number(value)]!
            actions.edit(`Weighed in ${pack?.name ?? 'no pack'}`, it =>
              withWeighedIn(it, pack && takesOf(it, open, pack), open.person),
            )
          }}
        />
      ) : null}
      <div class="fields">
        <QuantityField path="log/weighedKg" label="It weighs" kind="mass" limit={TRIP_LOG_LIMITS.weighedKg} />
        <QuantityField
          path="log/weighedWaterLitres"
          label="Water in it"
          kind="volume"
          limit={TRIP_LOG_LIMITS.weighedWaterLitres}
          usual={water}
          usualFrom="what the trip leaves with"
        />
      </div>
      {water > 0 && log.weighedWaterLitres !== 0 ? (
        <button
          type="button"
          class="link"
          onClick={() => actions.setField('log/weighedWaterLitres', 0, null)}
        >
          Weighed without water
        </button>
      ) : null}
      {weighing ? <Beside weighing={weighing} asked={asked} formats={formats} /> : null}
    </section>
  )
}

interface BesideProps {
  weighing: Weighing
  asked: Parameters<typeof weighingOf>[0]
  formats: Formats
}

function Beside({ weighing, asked, formats }: BesideProps) {
  const isSame = agrees(weighing, formats)
  const { shared, packKg, calculatedKg, waterLitres } = weighing
  const rest = isSame ? null : unexplained(weighing, asked.plan, formats)
  const causes = isSame ? [] : causesOf(weighing, asked, formats)
  return (
    <div class="weighed" data-figures="why">
      <p role="status">
        <strong>{isSame ? 'As calculated' : differenceText(weighing, formats)}</strong>:{' '}
        {formats.kg(calculatedKg)} with {formats.water(waterLitres)} of water
        {packKg === null ? ', without a pack' : ` and the pack, ${formats.gear(packKg)}`}.
      </p>
      {causes.length > 0 ? (
        <>
          <h4>Likely causes</h4>
          <ul class="causes">
            {causes.map(cause => (
              <li key={cause.path}>
                <ToField {...cause} />
              </li>
            ))}
          </ul>
        </>
      ) : null}
      {rest ? <p>{rest}</p> : null}
      {!isSame && shared.masses.length > 0 ? (
        <button
          type="button"
          onClick={() =>
            actions.edit('Spread the scale reading over the guesses', draft =>
              withSpread(draft, shared.masses),
            )
          }
        >
          Spread {sharedText(weighing, formats)}
        </button>
      ) : null}
      <Why
        about={{
          kind: 'noted',
          title: 'On the scale',
          says: 'The load when you leave the start, with the water you say. A guess counts as up to a fifth off, what is stated a twentieth, what is weighed half a percent.',
          lines: weighingLines(weighing, formats).concat(
            causes.map(({ name, says }) => ({ label: name, value: says })),
            [
              ...(rest ? [{ label: 'Left', value: rest }] : []),
              { label: 'Spread', value: sharedText(weighing, formats) },
              { label: 'So it is', value: differenceText(weighing, formats) },
            ],
          ),
        }}
        figure="How this is calculated"
      />
    </div>
  )
}
