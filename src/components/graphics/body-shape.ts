// The geometry of the cutaway: a pack's main body seen from the front, to scale. Equal areas are equal litres,
// because every body is taken as equally deep into the page. In cm, y upwards from the floor of the pack.

/** How deep into the page every body is taken to be, cm. A drawing convention of ours, near real packs. */
const DEPTH_CM = 28
/** Mean width over height where no inner height is known, or one outside these limits. Judgements of ours. */
export const PROPORTION = 0.55
const NARROWEST = 0.4
const WIDEST = 0.75
/** How far the sides of what lies above the brim lean out, cm per cm. */
const LEAN = 0.3

/** One level of the shape: the sides at height y. */
export interface Level {
  y: number
  left: number
  right: number
}

export interface BodyShape {
  heightCm: number
  widthCm: number
  /** False: the height follows from the litres by the stated proportion. */
  heightKnown: boolean
  /** From the floor to the brim. */
  body: Level[]
  /** From the brim to the end of the collar; empty without one. */
  collar: Level[]
}

export const areaOf = (litres: number): number => (litres * 1000) / DEPTH_CM

/** Height of a body of this many litres by the stated proportion, cm. */
export const usualHeight = (litres: number): number => Math.sqrt(areaOf(litres) / PROPORTION)

/** The sides bulge and the lower corners are round: width over full width at u = height / full height. */
function profile(u: number): number {
  const corner = u < 0.06 ? Math.sqrt(1 - (1 - u / 0.06) ** 2) : 1
  return (0.86 + 0.14 * Math.sin(Math.PI * (0.1 + 0.75 * u))) * (0.82 + 0.18 * corner)
}

const STEPS = 48
const UNITS = Array.from({ length: STEPS + 1 }, (_, i) => (i / STEPS) ** 1.5)

function areaBetween(levels: readonly Level[]): number {
  let area = 0
  for (let i = 1; i < levels.length; i++) area += slice(levels[i - 1]!, levels[i]!)
  return area
}

const widthOf = ({ left, right }: Level): number => right - left
const slice = (low: Level, high: Level): number => ((widthOf(low) + widthOf(high)) / 2) * (high.y - low.y)

/** The shape of a main body of more than 0 litres; its area is exactly `areaOf(bodyLitres)`. */
export function shapeOf(pack: {
  bodyLitres: number
  collarLitres: number
  innerHeightCm: number | null
}): BodyShape {
  const area = areaOf(pack.bodyLitres)
  const usual = usualHeight(pack.bodyLitres)
  const stated = pack.innerHeightCm ?? 0
  const heightKnown = stated >= Math.sqrt(area / WIDEST) && stated <= Math.sqrt(area / NARROWEST)
  const heightCm = heightKnown ? stated : usual
  const unit = UNITS.map(u => ({ y: u * heightCm, left: -profile(u) / 2, right: profile(u) / 2 }))
  const widthCm = area / areaBetween(unit)
  const body = unit.map(({ y, left, right }) => ({ y, left: left * widthCm, right: right * widthCm }))
  const brim = body.at(-1)!
  const collarCm = areaOf(pack.collarLitres) / widthOf(brim)
  return {
    heightCm,
    widthCm,
    heightKnown,
    body,
    collar: collarCm > 0 ? [brim, { ...brim, y: brim.y + collarCm }] : [],
  }
}

/** What lies above a level when `litres` more are heaped on it; empty for none. */
export function heapOn(top: Level, litres: number): Level[] {
  if (!(litres > 0)) return []
  const width = widthOf(top)
  const rise = (Math.sqrt(width ** 2 + 4 * LEAN * areaOf(litres)) - width) / (2 * LEAN)
  return [top, { y: top.y + rise, left: top.left - LEAN * rise, right: top.right + LEAN * rise }]
}

/** Height to which `litres` fill the body, then its collar, then a heap above. */
export function fillHeight(shape: BodyShape, litres: number): number {
  const levels = [...shape.body, ...shape.collar.slice(1)]
  let left = areaOf(Math.max(0, litres))
  for (let i = 1; i < levels.length; i++) {
    const low = levels[i - 1]!
    const high = levels[i]!
    const here = slice(low, high)
    if (left < here) {
      const lean = (widthOf(high) - widthOf(low)) / (high.y - low.y)
      const width = widthOf(low)
      // Root of the trapezoid's area, in the form that stays exact when its sides are parallel.
      return low.y + (2 * left) / (width + Math.sqrt(Math.max(0, width ** 2 + 2 * lean * left)))
    }
    left -= here
  }
  const top = levels.at(-1)!
  return heapOn(top, (left * DEPTH_CM) / 1000).at(-1)?.y ?? top.y
}
