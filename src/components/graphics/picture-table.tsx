// "The same as a table": what a picture plots, in a box of its own that scrolls sideways where it must.

import type { ComponentChildren } from 'preact'

export interface PictureTableProps {
  caption: string
  heads: string[]
  /** The first cell of a row is its head. */
  rows: [head: ComponentChildren, ...cells: ComponentChildren[]][]
  /** A sentence below the table. */
  note?: string
}

export function PictureTable({ caption, heads, rows, note }: PictureTableProps) {
  return (
    <details class="picture-same">
      <summary>The same as a table</summary>
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
            {rows.map(([head, ...cells], row) => (
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
      {note && <p class="quiet">{note}</p>}
    </details>
  )
}
