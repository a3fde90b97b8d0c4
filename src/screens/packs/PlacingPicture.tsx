// The placing as a picture: a pack on a back from the side, its load's centre packed evenly and with the heavy things
// against the back; and the same as a table.

import { PictureTable, px, useRoom } from '../../components/graphics'
import type { Formats } from '../../report'
import { newtonMetres, type Placing, type PlacingWords, wholeCm } from '../../report/placing'
import { type PlacingPlan, planPlacing } from './placing-plan'

interface PictureProps {
  placing: Placing
  words: PlacingWords
  name: string
  formats: Formats
}

const TALL_PX = 300
/** Room beside the drawing for its labels, in em, and the least for the drawing itself. */
const LABELS_EM = 7
const LEAST_PX = 110

interface Sides {
  x: number
  y: number
  width: number
  height: number
}

const sides = ({ x, y, width, height }: Sides) => ({
  x: px(x),
  y: px(y),
  width: px(width),
  height: px(height),
})

export function PlacingPicture({ placing, words, name, formats }: PictureProps) {
  const { ref, room } = useRoom()
  // Where there is no room beside the drawing, the sentences under it have to do.
  const isWide = room.widthPx >= LEAST_PX + LABELS_EM * room.emPx
  const labelsPx = isWide ? LABELS_EM * room.emPx : 0
  const plan = planPlacing(placing, { widthPx: room.widthPx - labelsPx, tallPx: TALL_PX })
  const { now, after, moved } = placing
  const hasMoved = moved.length > 0
  const says = `${name} from the side. ${words.now} ${words.after ?? ''}`
  const behind = (metres: number) => wholeCm(metres, formats)
  const { body, hip } = plan
  return (
    <figure class="picture placing-picture">
      <figcaption>
        <bdi>{name}</bdi> from the side
      </figcaption>
      <div class="drawing" ref={ref}>
        <svg width={px(plan.widthPx + labelsPx)} height={px(plan.heightPx)} role="img" aria-label={says}>
          <path class="harness" d={plan.outline} />
          <circle class="placing-head" cx={px(plan.head.x)} cy={px(plan.head.y)} r={px(plan.head.radius)} />
          <rect class="body-paper" {...sides(body)} rx="6" />
          <rect
            class="placing-fill"
            {...sides({ ...body, y: plan.levelY, height: Math.max(0, body.y + body.height - plan.levelY) })}
            rx="6"
          />
          {plan.moved.map((thing, i) => (
            <rect key={i} class="placing-thing" {...sides(thing)} rx="2" />
          ))}
          <rect class="body" {...sides(body)} rx="6" />
          <path class="placing-lever" d={`M${px(hip.x)} ${px(hip.y)}V${px(plan.now.y)}`} />
          <Lever from={hip} to={plan.now} isThen={false} />
          {hasMoved ? <Lever from={hip} to={plan.after} isThen /> : null}
          <path
            class="axis"
            d={`M${px(hip.x - 7)} ${px(hip.y)}H${px(hip.x + 7)}M${px(hip.x)} ${px(hip.y - 7)}V${px(hip.y + 7)}`}
          />
          {isWide ? <Labels {...{ plan, placing, emPx: room.emPx }} /> : null}
          <text x={px(hip.x)} y={px(hip.y + 1.3 * room.emPx)} class="mid">
            hips
          </text>
        </svg>
      </div>
      <p class="quiet">
        Open ring: the centre, packed evenly.
        {hasMoved ? ' Filled: with the boxed items against the back.' : ''} The cross is the hip axis.
      </p>
      <PictureTable
        caption={`${name}: the centre of the load`}
        heads={['', 'Behind the hips', 'Moment']}
        rows={[
          ['Packed evenly', behind(now.behindM), newtonMetres(now.momentNm)],
          ...(hasMoved
            ? [
                ['Heavy items close', behind(after.behindM), newtonMetres(after.momentNm)] as [
                  string,
                  string,
                  string,
                ],
              ]
            : []),
          ...words.things.map((thing): [string, string, string] => [
            `${thing.name}, ${thing.mass}`,
            `${thing.from} behind the back panel`,
            `then ${thing.to}`,
          ]),
        ]}
      />
    </figure>
  )
}

/** From the hips up to the height of the load's centre, and back to it. */
function Lever({ from, to, isThen }: { from: Point; to: Point; isThen: boolean }) {
  const y = isThen ? to.y + 10 : to.y
  return (
    <>
      <path class="placing-lever" d={`M${px(from.x)} ${px(y)}H${px(to.x)}`} />
      <circle class={isThen ? 'placing-then' : 'placing-now'} cx={px(to.x)} cy={px(y)} r="5" />
    </>
  )
}

interface Point {
  x: number
  y: number
}

/** The moments beside the drawing, at the height of the load's centre. */
function Labels({
  plan,
  placing: { now, after, moved },
  emPx,
}: {
  plan: PlacingPlan
  placing: Placing
  emPx: number
}) {
  const x = px(plan.widthPx + 6)
  const y = (ems: number) => px(plan.now.y + ems * emPx)
  return (
    <>
      <text x={x} y={y(-1.6)} class="strong">
        {newtonMetres(now.momentNm)}
      </text>
      <text x={x} y={y(-0.4)}>
        evenly
      </text>
      {moved.length > 0 ? (
        <>
          <text x={x} y={y(1.2)} class="strong">
            {newtonMetres(after.momentNm)}
          </text>
          <text x={x} y={y(2.4)}>
            heavy close
          </text>
        </>
      ) : null}
    </>
  )
}
