// How far a set-up reaches: the picture, its sentences, and the same as a table.

import { letters, type Mark, ReachPicture } from '../../components/graphics'
import { WhenOpen } from '../../components/pieces'
import { Why } from '../../components/why'
import type { Plan } from '../../plan'
import type { Reckoning } from '../../reckon'
import { type Formats, missingOf } from '../../report'
import { daysText, reachInWords } from '../../report/compare-packs'
import { inUnit } from '../../units'

interface ReachProps {
  setupIndex: number
  plan: Plan
  reckoning: Reckoning
  formats: Formats
}

export function Reach(props: ReachProps) {
  return (
    <WhenOpen class="why" summary="How far it reaches">
      {() => <Reached {...props} />}
    </WhenOpen>
  )
}

function Reached({ setupIndex, plan, reckoning, formats }: ReachProps) {
  const reach = reachInWords(plan, reckoning, { setupIndex, formats })
  if (!reach) return <p>Add daily food to see how many days this pack can carry.</p>
  const { points, runs, stretches, nothing } = reach
  if (nothing) return <p>{nothing}</p>
  const unit = formats.system === 'us' ? 'qt' : 'L'
  const water = (litres: number) => inUnit('volume', litres, unit)
  const names = letters(stretches.length)
  const missing = missingOf(plan)
  const isMost = missing.litres.length + missing.mass.length > 0
  const marks = stretches.map(
    ({ name, days, waterLitres, within }, i): Mark => ({
      letter: names[i]!,
      name,
      words: `${daysText(days)} with ${formats.water(waterLitres)}, ${within ? `within reach${isMost ? ' so far' : ''}` : 'beyond its reach'}`,
      shape: within ? 'dot' : 'cross',
      at: { x: water(waterLitres), y: days },
    }),
  )
  const most = (values: (number | null)[], least: number) =>
    1.12 * Math.max(least, ...values.filter(value => value !== null))
  const waterMax = most([...points.map(p => p.waterLitres), ...stretches.map(s => s.waterLitres)], 1)
  const sentences = runs.map(run => run.text)
  return (
    <div class="figures" data-figures="why">
      <ReachPicture
        caption="Days of food against water carried"
        says={sentences.join(' ')}
        water={{ label: `Water carried, ${unit}`, max: water(waterMax) }}
        days={{
          label: 'Days of food',
          max: most([...points.map(p => p.days), ...stretches.map(s => s.days)], 1),
        }}
        runs={runs.map(run => ({
          label: run.label,
          points: run.points.map(p => ({ water: water(p.waterLitres), days: p.days })),
        }))}
        marks={marks}
        table={{
          heads: ['Water carried', 'Days of food', 'Days to your share of body mass'],
          rows: points.map(p => [formats.water(p.waterLitres), daysText(p.days), daysText(p.shareDays)]),
        }}
      />
      {sentences.map(text => (
        <p key={text}>{text}</p>
      ))}
      {isMost ? <p>At most: items without litres or a mass are not counted.</p> : null}
      <p class="hint">
        Full rations at the first departure, the spare ones on top, and all else as packed then. The marks are
        this trip’s stretches between resupplies.
      </p>
      <Why about={{ kind: 'reach', setup: setupIndex }} figure="What these days are made of" />
    </div>
  )
}
