// The heading of a group among the rows of a long list.

import type { ComponentChildren } from 'preact'
import { entryProps } from './LongList'

interface GroupHeadingProps {
  /** Its key in the list, its place there, and how many entries there are. */
  id: string
  at: number
  of: number | undefined
  name: string
  /** A button for all of the group. */
  aside?: ComponentChildren
}

export const GroupHeading = ({ id, at, of, name, aside }: GroupHeadingProps) => (
  <li class="group" {...entryProps(id, at, of)}>
    <h3>{name || 'Other'}</h3>
    {aside}
  </li>
)
