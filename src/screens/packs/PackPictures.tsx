// Two pictures that set the packs side by side: room against what they bear, and mass against price of those that do.

import { letters, type Mark, type MarkShape, SpotPicture } from '../../components/graphics'
import { Why } from '../../components/why'
import type { Plan } from '../../plan'
import type { Answer, Reckoning, SetupReckoning } from '../../reckon'
import { ANSWERS, type Formats, isYes, leastText, type Missing, missingOf } from '../../report'
import { type Comparison, comparisonOf, NOT_BEATEN, priceText } from '../../report/compare-packs'
import { inUnit } from '../../units'

interface PicturesProps {
  plan: Plan
  reckoning: Reckoning
  formats: Formats
}

const SHAPES: Record<Answer, MarkShape> = {
  does: 'dot',
  'with-care': 'half-dot',
  'cannot-tell': 'ring',
  'does-not': 'cross',
}

export function PackPictures({ plan, reckoning, formats }: PicturesProps) {
  const compared = comparisonOf(plan, reckoning)
  const names = letters(reckoning.packs.length)
  const titled = reckoning.packs.map((setup, i) => ({
    setup,
    compared: compared[i]!,
    letter: names[i]!,
    name: titleOf(setup, plan),
    answer: setup.answer,
  }))
  return (
    <div class="figures" data-figures="why">
      <RoomAgainstLoad titled={titled} {...{ plan, reckoning, formats }} />
      <MassAgainstPrice titled={titled.filter(({ answer }) => isYes(answer))} plan={plan} formats={formats} />
      <Why about={{ kind: 'bears' }} figure="What each can carry" />
    </div>
  )
}

interface Titled {
  setup: SetupReckoning
  compared: Comparison
  letter: string
  name: string
  answer: Answer
}

function titleOf({ name, setup, pack }: SetupReckoning, { packs }: Plan): string {
  return packs[pack]!.setups.length > 1 ? `${name}, ${setup}` : name
}

function RoomAgainstLoad({ titled, plan, reckoning, formats }: PicturesProps & { titled: Titled[] }) {
  const unit = formats.system === 'us' ? 'lb' : 'kg'
  const load = (kg: number) => inUnit('mass', kg, unit)
  const { need } = reckoning
  const missing = missingOf(plan)
  const noLitres = missing.litres.length > 0
  const litres = leastText(missing, 'litres', formats.litres(need.bodyLitres))
  const kg = leastText(missing, 'mass', formats.kg(need.peakLoadFullWaterKg))
  const litresOf = ({ setup }: Titled) => plan.packs[setup.pack]!.bodyLitres
  const marks = titled.map((it): Mark => {
    const { bearsKg } = it.compared
    const words = ANSWERS[it.answer].words.toLowerCase()
    return {
      letter: it.letter,
      name: it.name,
      words: bearsKg === null ? `${words}; rating unknown, so not drawn` : words,
      shape: SHAPES[it.answer],
      at: bearsKg === null ? null : { x: litresOf(it), y: Math.max(0, load(bearsKg)) },
    }
  })
  const bears = titled.flatMap(({ compared: { bearsKg } }) => (bearsKg === null ? [] : [bearsKg]))
  return (
    <SpotPicture
      caption="Room and load"
      says={`This trip asks for ${litres} of main body and ${kg} of load; ${marks.map(mark => `${mark.name}: ${mark.words}`).join('; ')}.`}
      x={{ label: 'Main body, L', max: 1.12 * Math.max(need.bodyLitresSafe, ...titled.map(litresOf)) }}
      y={{
        label: `Load it can carry, ${unit}`,
        max: 1.15 * load(Math.max(need.peakLoadFullWaterKg, ...bears)),
      }}
      region={{
        x: need.bodyLitres,
        // Of things without litres nobody can say how much room is enough.
        sureX: noLitres ? Number.POSITIVE_INFINITY : need.bodyLitresSafe,
        y: load(need.peakLoadFullWaterKg),
        label: regionText(missing),
      }}
      marks={marks}
      table={{
        heads: ['Main body', 'Load it can carry', 'Answer'],
        cells: i => {
          const it = titled[i]!
          const { bearsKg } = it.compared
          return [
            formats.litres(litresOf(it)),
            bearsKg === null ? 'not known' : formats.kg(bearsKg),
            ANSWERS[it.answer].words,
          ]
        },
      }}
    />
  )
}

function regionText({ litres, mass }: Missing): string {
  if (litres.length > 0) return 'Hatched: enough for what is counted.'
  const shaded = mass.length > 0 ? 'what is counted' : 'this trip'
  return `Shaded: room and load are enough for ${shaded}. Hatched: the room is uncertain.`
}

function MassAgainstPrice({ titled, plan, formats }: { titled: Titled[]; plan: Plan; formats: Formats }) {
  if (!titled.some(({ compared }) => compared.price !== null))
    return <p>Mass against price is drawn once a suitable pack has a price.</p>
  const unit = formats.system === 'us' ? 'lb' : 'kg'
  const mass = (kg: number) => inUnit('mass', kg, unit)
  const currencies = new Set(titled.flatMap(({ setup }) => plan.packs[setup.pack]!.currency ?? []))
  const currency = currencies.size === 1 ? [...currencies][0]! : ''
  const priced = (price: number | null) => priceText(price, currency)
  const marks = titled.map(({ letter, name, compared: { price, massKg, notBeaten } }): Mark => {
    const words = `${formats.gear(massKg)}, ${priced(price)}${price === null ? ', so not drawn' : ''}`
    return {
      letter,
      name,
      words: notBeaten ? `${words}. ${NOT_BEATEN}` : words,
      shape: notBeaten ? 'dot' : 'ring',
      at: price === null ? null : { x: price, y: mass(massKg) },
    }
  })
  return (
    <>
      <SpotPicture
        caption="Mass and price of suitable packs"
        says={marks.map(mark => `${mark.name}: ${mark.words}`).join('; ')}
        x={{
          label: `Price${currency ? `, ${currency}` : ''}`,
          max: 1.15 * Math.max(1, ...titled.map(it => it.compared.price ?? 0)),
        }}
        y={{
          label: `Pack mass, ${unit}`,
          max: 1.15 * mass(Math.max(...titled.map(it => it.compared.massKg))),
        }}
        marks={marks}
        table={{
          heads: ['Pack mass', 'Price', 'Compared'],
          cells: i => {
            const { massKg, price, notBeaten } = titled[i]!.compared
            return [formats.gear(massKg), priced(price), notBeaten ? NOT_BEATEN : 'Another beats it']
          },
        }}
      />
      {currencies.size > 1 ? (
        <p class="hint">Prices in several currencies are drawn as plain numbers.</p>
      ) : null}
    </>
  )
}
