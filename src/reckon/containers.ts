// What is in containers, and what does not fit in them, at any stock. Containers with the same mix of things are full one
// after the other as there is more of it, so they stand in that order with running sums: a moment looks up how many are
// full, however many there are.

/** What a container holds of one supply: an index of `SUPPLIES`, and litres per unit of it. */
export interface Content {
  supply: number
  litres: number
}

export interface Container {
  roomLitres: number
  /** Only of the supplies that are in it. */
  contents: Content[]
}

/** Litres inside one container. */
export function insideLitres({ contents }: Container, units: number[]): number {
  let litres = 0
  for (const content of contents) litres += units[content.supply]! * content.litres
  return litres
}

/** Containers of one mix, in the order in which they are full. */
export interface Alike {
  /** What is in them, as litres for each litre of its first supply. */
  mix: Content[]
  /** Amount of the mix from which on each is over-full, in order. */
  fullAt: number[]
  /** Of the first 0, 1, 2 … of them together: litres inside for an amount of 1, and room. */
  litres: number[]
  roomLitres: number[]
}

/** The containers by their mix; those with nothing in them are left out. */
export function alikeContainers(containers: Iterable<Container>): Alike[] {
  const byMix = new Map<string, { mix: Content[]; members: { litres: number; roomLitres: number }[] }>()
  for (const { contents, roomLitres } of containers) {
    const filled = contents.filter(({ litres }) => litres > 0)
    if (filled.length === 0) continue
    const { litres } = filled[0]!
    const mix = filled.map(content => ({ supply: content.supply, litres: content.litres / litres }))
    // To twelve decimals: the same mix may differ by rounding.
    const key = mix.map(content => `${content.supply} ${Math.round(content.litres * 1e12)}`).join()
    const alike = byMix.get(key)
    if (alike) alike.members.push({ litres, roomLitres })
    else byMix.set(key, { mix, members: [{ litres, roomLitres }] })
  }
  return [...byMix.values()].map(({ mix, members }) => {
    const sorted = members
      .map(member => ({ ...member, fullAt: member.roomLitres / member.litres }))
      .sort((a, b) => a.fullAt - b.fullAt)
    return {
      mix,
      fullAt: sorted.map(({ fullAt }) => fullAt),
      litres: runningSums(sorted.map(({ litres }) => litres)),
      roomLitres: runningSums(sorted.map(({ roomLitres }) => roomLitres)),
    }
  })
}

/** The sums of the first 0, 1, 2 … numbers. */
function runningSums(numbers: number[]): number[] {
  const sums = [0]
  for (const n of numbers) sums.push(sums.at(-1)! + n)
  return sums
}

/** What does not fit rides in the main body as soft litres: how much of each of `SUPPLIES`, at a stock of so many units. */
export function overflowAt(alikes: readonly Alike[], units: number[]): number[] {
  const over = units.map(() => 0)
  for (const { mix, fullAt, litres, roomLitres } of alikes) {
    let amount = 0
    for (const content of mix) amount += units[content.supply]! * content.litres
    const full = countUnder(fullAt, amount)
    if (full === 0) continue
    const each = Math.max(0, litres[full]! - roomLitres[full]! / amount)
    for (const content of mix) over[content.supply]! += each * units[content.supply]! * content.litres
  }
  return over
}

/** How many of the values, which are in order, are less than the limit. */
function countUnder(values: number[], limit: number): number {
  let low = 0
  let high = values.length
  while (low < high) {
    const middle = (low + high) >> 1
    if (values[middle]! < limit) low = middle + 1
    else high = middle
  }
  return low
}

/** Of each container, the share of its contents that does not fit; 0 where all of it does. */
export function overflowShares(
  containers: ReadonlyMap<string, Container>,
  units: number[],
): Map<string, number> {
  return new Map(
    [...containers].map(([id, container]) => {
      const inside = insideLitres(container, units)
      return [id, inside > container.roomLitres ? (inside - container.roomLitres) / inside : 0]
    }),
  )
}
