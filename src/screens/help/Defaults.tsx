// What counts while the hiker has said nothing, and where each figure comes from.

import { useSystem } from '../../components/fields'
import { defaultsByOrigin } from '../../report/help'
import { capital } from '../../units'

export function Defaults() {
  const system = useSystem()
  return (
    <>
      {defaultsByOrigin(system).map(({ origin, rows }) => (
        <section key={origin}>
          <h3>{capital(origin)}</h3>
          <dl class="facts">
            {rows.map(({ label, value }) => (
              <div key={label}>
                <dt>{label}</dt>
                <dd>{value}</dd>
              </div>
            ))}
          </dl>
        </section>
      ))}
    </>
  )
}
