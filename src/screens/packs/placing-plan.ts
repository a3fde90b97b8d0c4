// Where everything in the picture of the placing goes: a pack on a back, seen from the side, to scale, in px.

import { px } from '../../components/graphics'
import { ASSUMED, type Placing } from '../../report/placing'

export interface PlacingPlan {
  widthPx: number
  heightPx: number
  /** Hip axis. */
  hip: { x: number; y: number }
  /** The pack's body, its back panel on the left. */
  body: { x: number; y: number; width: number; height: number }
  /** Head and outlines of the wearer. */
  head: { x: number; y: number; radius: number }
  outline: string
  /** Top of what is filled. */
  levelY: number
  /** Middle of the load, and with the heavy things against the back. */
  now: { x: number; y: number }
  after: { x: number; y: number }
  /** Things against the back, one above another, as deep as they ride. */
  moved: { x: number; y: number; width: number; height: number }[]
}

/** Room around pack and wearer, m. */
const BEFORE_M = 0.18
const BELOW_M = 0.12
const BEHIND_M = 0.04
const ABOVE_M = 0.02
/** The wearer, near a grown one’s size, by points behind and above the hip axis, m. They say which side the back is. */
const HEAD = { behindM: -0.04, aboveM: 0.68, radiusM: 0.1 }
const BACK = [
  [0, 0.57],
  [0.07, 0.5],
  [0.095, 0.38],
  [0.08, 0.16],
  [0.1, -0.02],
  [0.06, -0.12],
] as const
const FRONT = [
  [-0.06, 0.57],
  [-0.1, 0.46],
  [-0.13, 0.34],
  [-0.11, 0.12],
  [-0.09, -0.12],
] as const

export function planPlacing(placing: Placing, room: { widthPx: number; tallPx: number }): PlacingPlan {
  const { depthCm, heightCm, now, after, moved } = placing
  const [depth, height] = [depthCm / 100, heightCm / 100]
  const wideM = BEFORE_M + ASSUMED.backBehindM + depth + BEHIND_M
  const topM = Math.max(height + ASSUMED.floorAboveM, HEAD.aboveM + HEAD.radiusM)
  const tallM = ABOVE_M + topM + BELOW_M
  const scale = Math.min(room.widthPx / wideM, room.tallPx / tallM)
  const widthPx = wideM * scale
  const heightPx = tallM * scale
  const x = (behindM: number) => (BEFORE_M + behindM) * scale
  const y = (aboveM: number) => heightPx - (BELOW_M + aboveM) * scale
  const floor = ASSUMED.floorAboveM
  const filledM = 2 * (now.aboveM - floor)
  const slot = filledM / Math.max(1, moved.length)
  return {
    widthPx,
    heightPx,
    hip: { x: x(0), y: y(0) },
    head: { x: x(HEAD.behindM), y: y(HEAD.aboveM), radius: HEAD.radiusM * scale },
    outline: [BACK, FRONT]
      .map(points => curve(points.map(([behindM, aboveM]) => [x(behindM), y(aboveM)])))
      .join(''),
    body: { x: x(ASSUMED.backBehindM), y: y(floor + height), width: depth * scale, height: height * scale },
    levelY: y(floor + filledM),
    now: { x: x(now.behindM), y: y(now.aboveM) },
    after: { x: x(after.behindM), y: y(after.aboveM) },
    moved: moved.map(({ toCm }, i) => {
      const side = Math.min((2 * toCm) / 100, slot * 0.9)
      const middle = floor + slot * (i + 0.5)
      return {
        x: x(ASSUMED.backBehindM),
        y: y(middle + side / 2),
        width: (2 * toCm * scale) / 100,
        height: side * scale,
      }
    }),
  }
}

/** A smooth line through points: quadratic from middle to middle of its pieces. */
function curve(points: [number, number][]): string {
  const text = ([x, y]: [number, number]) => `${px(x)} ${px(y)}`
  const [first, ...rest] = points as [[number, number], ...[number, number][]]
  const turns = rest.slice(0, -1).map((at, i): string => {
    const next = rest[i + 1]!
    const middle: [number, number] = [(at[0] + next[0]) / 2, (at[1] + next[1]) / 2]
    return `Q${text(at)} ${text(middle)}`
  })
  return `M${text(first)}${turns.join('')}L${text(rest.at(-1)!)}`
}
