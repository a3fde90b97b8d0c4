// Numbers of a file: a list that grows without a box for each number, and strict reading of decimals.

const NONE = new Float64Array(0)

/** A list of numbers in one block of memory that doubles when it is full. */
export function growingNumbers() {
  let block: Float64Array<ArrayBuffer> = NONE
  let length = 0
  return {
    push(value: number) {
      if (length === block.length) {
        const larger = new Float64Array(Math.max(256, 2 * length))
        larger.set(block)
        block = larger
      }
      block[length++] = value
    },
    get length() {
      return length
    },
    /** A copy of its own memory, of just the right size. */
    take: () => block.slice(0, length),
  }
}

const DECIMAL = /^[+-]?(?:\d+(?:\.\d*)?|\.\d+)(?:[eE][+-]?\d{1,3})?$/

/** A decimal as XML writes it, or NaN: no hexadecimal, no decimal comma, no "Infinity", no empty text as 0. */
export function decimal(text: string): number {
  const trimmed = text.trim()
  return trimmed.length <= 40 && DECIMAL.test(trimmed) ? Number(trimmed) : Number.NaN
}
