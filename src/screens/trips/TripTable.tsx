// Every set-up of every pack against every trip, in words.

import type { AllTrips } from '../../report/choosing'

export function TripTable({ result: { names, rows } }: { result: AllTrips }) {
  if (rows.length === 0) return null
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: a box that scrolls has to be reachable by keyboard
    <section class="scroll" aria-label="Packs and trips" tabIndex={0}>
      <table class="trip-table">
        <caption>Every pack for every trip</caption>
        <thead>
          <tr>
            <th scope="col">Pack</th>
            {names.map((name, i) => (
              <th key={i} scope="col">
                <bdi>{name}</bdi>
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {rows.map(({ pack, setup, named, cells }) => (
            <tr key={pack + setup}>
              <th scope="row">
                <bdi>{pack}</bdi>
                {named ? (
                  <>
                    , <bdi>{setup}</bdi>
                  </>
                ) : null}
              </th>
              {cells.map(({ answer, why }, i) => (
                <td key={i}>
                  <strong>{answer}</strong>
                  <span class="cell-why">{why}</span>
                </td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  )
}
