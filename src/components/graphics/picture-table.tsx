// "The same as a table": what a picture plots, in a box of its own that scrolls sideways where it must.

import type { ComponentChildren } from 'preact'
import { usePortions } from '../long-list'
import { WhenOpen } from '../pieces'

/** The first cell of a row is its head. */
export type Row = [head: ComponentChildren, ...cells: ComponentChildren[]]

export interface PictureTableProps {
  caption: string
  heads: string[]
  /** Of many rows only those are made that are drawn. */
  rows: Row[] | { count: number; make: (index: number) => Row }
  /** A sentence below the table. */
  note?: string
}

/** Longer tables are drawn in portions. */
const SHORT = 250

export function PictureTable(props: PictureTableProps) {
  return (
    <WhenOpen class="picture-same" summary="The same as a table">
      {() => <Table {...props} />}
    </WhenOpen>
  )
}

const countOf = (rows: PictureTableProps['rows']) => (Array.isArray(rows) ? rows.length : rows.count)

const firstOf = (rows: PictureTableProps['rows'], count: number): Row[] =>
  Array.isArray(rows) ? rows.slice(0, count) : Array.from({ length: count }, (_, index) => rows.make(index))

function Table({ caption, heads, rows, note }: PictureTableProps) {
  const { drawn, more } = usePortions(countOf(rows), 'rows', SHORT)
  return (
    <>
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: a box that scrolls has to be reachable by keyboard */}
      <section class="picture-scroll" aria-label={caption} tabIndex={0}>
        <table>
          <caption>{caption}</caption>
          <thead>
            <tr>
              {heads.map(head => (
                <th key={head} scope="col">
                  {head}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {firstOf(rows, drawn).map(([head, ...cells], row) => (
              <tr key={row}>
                <th scope="row">{head}</th>
                {cells.map((cell, column) => (
                  <td key={column}>{cell}</td>
                ))}
              </tr>
            ))}
          </tbody>
        </table>
      </section>
      {more}
      {note && <p class="quiet">{note}</p>}
    </>
  )
}
