// A figure that can be asked: tapped, it tells what it is made of and rests on. The panel and the register of sources
// are fetched on the first opening.

import type { ComponentChildren } from 'preact'
import type { About } from '../../report/why'
import { later } from '../frame'
import { Ask } from './Ask'

const Panel = later(async () => (await import('./Panel')).Panel)

export interface WhyProps {
  about: About | readonly About[]
  /** The figure that is asked about, as it is shown. */
  figure: ComponentChildren
  /** What the sheet is called, where the figure alone does not say. */
  title?: string
  class?: string
  /** What else there is to say when it is open, before the reasons. */
  children?: ComponentChildren
}

export function Why({ about, figure, title, class: className, children }: WhyProps) {
  const answer = () => (
    <>
      {children}
      {[about].flat().map((each, i, all) => (
        <Panel key={i} about={each as About} isLast={i === all.length - 1} />
      ))}
    </>
  )
  return (
    <Ask
      title={title ?? (typeof figure === 'string' ? figure : 'Why')}
      answer={answer}
      {...(className ? { class: className } : {})}
    >
      {figure}
    </Ask>
  )
}
