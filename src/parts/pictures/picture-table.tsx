// "The same as a table": what a picture plots, in a box of its own that scrolls sideways where it must.

import type { ComponentChildren } from 'preact'

export function PictureTable({
  caption,
  note,
  children,
}: {
  caption: string
  note?: ComponentChildren
  children: ComponentChildren
}) {
  return (
    <details class="picture-same">
      <summary>The same as a table</summary>
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: a box that scrolls has to be reachable by keyboard */}
      <section class="picture-scroll" aria-label={caption} tabIndex={0}>
        <table>
          <caption>{caption}</caption>
          {children}
        </table>
      </section>
      {note}
    </details>
  )
}
