// A part of the trip's form that is closed where there is little room: its line says what it holds.

import type { ComponentChildren } from 'preact'
import { useMedia } from '../../components/frame'

/** As in trip.css: from here the forms stand beside the stops. */
const BESIDE = '(min-width: 105rem)'

export function Fold({
  title,
  says,
  children,
}: {
  title: string
  says?: string
  children: ComponentChildren
}) {
  const isBeside = useMedia(BESIDE)
  return (
    <details class="more section" open={isBeside}>
      <summary>
        <h3>{title}</h3>
        {says ? (
          <span class="fold-says" data-figures="typed">
            {says}
          </span>
        ) : null}
      </summary>
      {children}
    </details>
  )
}
