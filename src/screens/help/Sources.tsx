// Everything the figures rest on, by how much of it was read.

import sources from '../../../data/sources.json'
import { type Source, sourceText, standingText } from '../../report/why'
import { capital } from '../../units'

const REGISTER: Record<string, Source> = sources

export function Sources() {
  const standings = [...new Set(Object.values(REGISTER).map(({ standing }) => standing))]
  return (
    <>
      {standings.map(standing => (
        <section key={standing}>
          <h3>{capital(standingText(standing))}</h3>
          <ul>
            {Object.entries(REGISTER)
              .filter(([, source]) => source.standing === standing)
              .map(([key, source]) => (
                <li key={key}>{sourceText(source)}</li>
              ))}
          </ul>
        </section>
      ))}
    </>
  )
}
