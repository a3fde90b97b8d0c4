import type { ComponentChildren } from 'preact'

/** One state of a component under its name. */
export function State({ name, children }: { name: string; children: ComponentChildren }) {
  return (
    <section class="stack">
      <p class="hint">{name}</p>
      {children}
    </section>
  )
}
