// The readings typed while a thing is measured, kept by the panel they belong to.

import type { DraftItem } from '../../plan'

export interface TextsProps {
  item: DraftItem
  texts: Readonly<Record<string, string>>
  onText: (key: string, text: string) => void
}
