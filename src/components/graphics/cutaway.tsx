// The cutaway: a pack's main body to scale, filled to what the chosen moment needs, with a table that says the same.

import './pictures.css'
import { useId } from 'preact/hooks'
import { BANDS, bandsIn } from './bands'
import { PROPORTION } from './body-shape'
import { CutawayDrawing } from './cutaway-drawing'
import { type Amounts, amountsOf, type Body, planCutaway } from './cutaway-plan'
import { type CutawayWords, cutawayWords, type LitreFormat } from './cutaway-words'
import { LayerHand } from './layer-hand'
import { BandKey } from './load-key'
import { Patterns } from './patterns'
import { PictureTable } from './picture-table'
import { useRoom } from './use-drawing'
import { isolate } from './words'

export interface CutawayProps extends Body {
  name: string
  /** The chosen moment in words ("leaving Larch Spring, day 2": `placeWords`); without it, its day. */
  at?: string
  /** Something is not counted: the need is a lower bound. */
  atLeast?: boolean
  format: LitreFormat
  /** Name, sentence, key and table stand elsewhere. */
  isBare?: boolean
  /** Layers can be chosen: which is, how it is told, and what follows. */
  hand?: { chosen: number | null; onChoose(index: number): void; textOf(index: number): string }
}

/**
 * `scaleLitres`: the largest of what is shown side by side, body and collar together; all of them, in boxes of one
 * width, then draw a litre equally large.
 */
export function Cutaway(props: CutawayProps) {
  const { name, moment, format, bodyLitres, atLeast = false, isBare = false, hand } = props
  // A lower bound has no range to draw or to tell.
  const { bodyLitres: mostLitres } = props.need
  const need = atLeast ? { bodyLitres: mostLitres, bodyLitresSafe: mostLitres, sigmaV: 0 } : props.need
  const body = { ...props, need }
  const of = useId()
  const { ref, room } = useRoom()
  const known = bodyLitres !== null
  const amounts = amountsOf(body)
  const words = cutawayWords(amounts, {
    name,
    at: props.at ?? `day ${moment.day}`,
    known,
    need,
    atLeast,
    format,
  })
  const plan = planCutaway(body, words, room)
  const bands = bandsIn([amounts.layers])
  const filled = props.layers ? props.layers.map(({ band }) => band) : bands
  const height = plan?.shape.heightKnown
    ? 'The height is the one stated.'
    : `The height is drawn from the litres: about ${PROPORTION} times as wide as high.`
  return (
    <figure class="picture cutaway">
      {isBare ? null : (
        <figcaption>
          <bdi>{name}</bdi>
        </figcaption>
      )}
      <div class="drawing" ref={ref}>
        {plan ? (
          <svg width={plan.widthPx} height={plan.heightPx} role="img" aria-label={words.all}>
            <defs>
              <Patterns of={of} bands={filled} />
            </defs>
            <CutawayDrawing plan={plan} of={of} known={known} chosen={hand?.chosen ?? null} />
          </svg>
        ) : (
          <p>Nothing is in the main body yet. Add gear to fill it.</p>
        )}
        {plan && hand && plan.layers.length > 0 ? <LayerHand layers={plan.layers} {...hand} /> : null}
      </div>
      {isBare ? null : (
        <Told {...{ name, of, words, bands, amounts, known, mostLitres, format }} height={height} />
      )}
    </figure>
  )
}

interface ToldProps {
  name: string
  of: string
  words: CutawayWords
  bands: ReturnType<typeof bandsIn>
  amounts: Amounts
  known: boolean
  mostLitres: number
  format: LitreFormat
  height: string
}

/** The picture in a sentence, its key, and its table. */
function Told({ name, of, words, bands, amounts, known, mostLitres, format, height }: ToldProps) {
  return (
    <>
      <p dir="auto">
        {words.now} {words.most}
      </p>
      <BandKey of={of} shown={bands} values={amounts.layers} format={format.litres} />
      <p class="quiet">Gaps left by packing are spread through the layers.</p>
      <PictureTable
        caption={`${isolate(name)}: the main body, layer by layer`}
        heads={['What', 'Litres']}
        rows={rowsOf(amounts, known, mostLitres).map(([what, value]) => [what, format.litres(value)])}
        note={`Equal areas are equal litres. ${height}`}
      />
    </>
  )
}

/** Every figure the picture plots, each with its name. */
function rowsOf(amounts: Amounts, known: boolean, mostLitres: number): [what: string, litres: number][] {
  const rows: [string, number][] = [...BANDS].reverse().map(({ band, word }) => [word, amounts.layers[band]])
  rows.push(['All in the main body', amounts.inLitres])
  if (known) rows.push(['Body to the brim', amounts.brimLitres], ['Over the brim', amounts.overBrimLitres])
  if (amounts.collarLitres > 0)
    rows.push(['Collar', amounts.collarLitres], ['More than body and collar', amounts.overCollarLitres])
  rows.push(['Need at its fullest', mostLitres])
  if (amounts.highLitres > amounts.lowLitres)
    rows.push(['Likely need, from', amounts.lowLitres], ['Likely need, to', amounts.highLitres])
  return rows
}
