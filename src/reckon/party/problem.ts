// The problem of sharing out as the search sees it: sums of pieces, and limits on them. It knows nothing of packs.

/** A sum that grows with each piece: `fixed` without any, `each[i]` more with piece i. None is below 0. */
export interface Row {
  fixed: number
  each: Float64Array
}

/** What room a side has: its fullest row, and what its pockets cannot take times `perPocketLitre`. */
export interface Room {
  rows: Row[]
  pockets: Row[]
  /** Infinity: not judged. */
  pocketLitres: number
  perPocketLitre: number
  /** Up to the first it surely does, beyond the second it surely does not; between them it has to be asked. */
  surelyLitres: number
  hardlyLitres: number
}

/** One who may be handed pieces. */
export interface Side {
  /** Contents at the moments that matter, kg; their largest, with `baseKg`, over `divisor` is the strain. */
  loads: Row[]
  baseKg: number
  divisor: number
  /** Whether this side's strain counts. */
  counts: boolean
  /** The most that the contents may weigh, and the most that the pack bears of them. */
  capKg: number
  packKg: number
  /** Null: not judged. */
  room: Room | null
  /** Whether piece i may be handed to it at all. */
  allowed: boolean[]
  /** Whether the loads say all there is; else they are the least there can be. */
  isExact: boolean
  /** What a full reckoning says of these pieces. */
  ask: (pieces: readonly number[]) => Asked
}

export interface Asked {
  /** The pack does, or there is none to be judged. */
  holds: boolean
  /** Contents and all that goes with them over the divisor. */
  strain: number
}

export interface Sharing {
  pieces: number
  sides: Side[]
}

/** Strains that differ by no more are the same. */
export const SAME_STRAIN = 1e-9

/** So near the limit of a pack rounding could decide: then it is asked. kg and L. */
const NEAR = 1e-9

export const isLimit = (value: number): boolean => value !== Number.POSITIVE_INFINITY

/** What each piece adds to all rows of a side. */
const columns = new WeakMap<Side, { fixed: Float64Array; adds: Float64Array[] }>()

function columnsOf(side: Side) {
  const known = columns.get(side)
  if (known) return known
  const { loads, room, allowed } = side
  const rows = [...loads, ...(room ? [...room.rows, ...room.pockets] : [])]
  const made = {
    fixed: Float64Array.from(rows, row => row.fixed),
    adds: allowed.map((_, i) => Float64Array.from(rows, row => row.each[i]!)),
  }
  columns.set(side, made)
  return made
}

/** The sums of one side as pieces come and go, and what they say. */
export class Sums {
  readonly values: Float64Array
  private readonly adds: Float64Array[]
  private readonly toLoads: number
  private readonly toRooms: number

  constructor(readonly side: Side) {
    const { fixed, adds } = columnsOf(side)
    this.values = fixed.slice()
    this.adds = adds
    this.toLoads = side.loads.length
    this.toRooms = this.toLoads + (side.room?.rows.length ?? 0)
  }

  add(piece: number): void {
    const { values } = this
    const adds = this.adds[piece]!
    for (let r = 0; r < values.length; r++) values[r]! += adds[r]!
  }

  takeAway(piece: number): void {
    const { values } = this
    const adds = this.adds[piece]!
    for (let r = 0; r < values.length; r++) values[r]! -= adds[r]!
  }

  get contentsKg(): number {
    return this.largest(0, this.toLoads)
  }

  get strain(): number {
    return (this.contentsKg + this.side.baseKg) / this.side.divisor
  }

  get litres(): number {
    const { room } = this.side
    if (!room) return 0
    const most = this.largest(this.toLoads, this.toRooms)
    if (!isLimit(room.pocketLitres)) return most
    const pockets = this.largest(this.toRooms, this.values.length)
    return most + room.perPocketLitre * Math.max(0, pockets - room.pocketLitres)
  }

  /** Not surely over a limit of its own, nor over a strain. */
  keepsWithin(strain: number): boolean {
    const { capKg, packKg, baseKg, divisor, counts, room } = this.side
    const kg = this.contentsKg
    if (kg > capKg || kg > packKg + NEAR || (counts && (kg + baseKg) / divisor > strain)) return false
    return room === null || this.litres <= room.hardlyLitres + NEAR
  }

  /** Surely over a limit of its own. */
  get isOver(): boolean {
    return !this.keepsWithin(Number.POSITIVE_INFINITY)
  }

  /** How far over its limits, as shares of them; 0 where it surely keeps them. */
  get excess(): number {
    const { capKg, packKg, room } = this.side
    const mostKg = Math.min(capKg, packKg)
    const load = isLimit(mostKg) ? share(this.contentsKg, mostKg) : 0
    return load + (room ? share(this.litres, room.surelyLitres) : 0)
  }

  /** The sums alone tell that it keeps its limits, and what its strain is. */
  get isClear(): boolean {
    const { packKg, room, isExact } = this.side
    if (!isExact || (isLimit(packKg) && this.contentsKg > packKg - NEAR)) return false
    return room === null || this.litres <= room.surelyLitres - NEAR
  }

  private largest(from: number, to: number): number {
    const { values } = this
    let most = 0
    for (let i = from; i < to; i++) if (values[i]! > most) most = values[i]!
    return most
  }
}

/** By how much of a limit a value is over it. */
const share = (value: number, limit: number) => Math.max(0, value - limit) / Math.max(1, limit)
