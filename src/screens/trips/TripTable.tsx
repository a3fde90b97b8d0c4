// Every set-up of every pack against every trip, in words.

import { usePortions } from '../../components/long-list'
import { Why } from '../../components/why'
import type { AllTrips } from '../../report/compare-packs'
import type { NamedPlan } from '../../report/why'

interface TripTableProps {
  result: AllTrips
  trips: readonly NamedPlan[]
}

export function TripTable({ result: { names, rows }, trips }: TripTableProps) {
  const { drawn, more } = usePortions(rows.length, 'rows')
  if (rows.length === 0) return null
  return (
    <>
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: a box that scrolls has to be reachable by keyboard */}
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
          {rows.slice(0, drawn).map(({ pack, setup, named, cells }, row) => (
            <tbody key={pack + setup} data-figures="why">
              <tr>
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
              <tr>
                <td colSpan={names.length + 1}>
                  <Why
                    about={{ kind: 'trips', trips, setup: row }}
                    figure={named ? `${pack}, ${setup}` : pack}
                  />
                </td>
              </tr>
            </tbody>
          ))}
        </table>
      </section>
      {more}
    </>
  )
}
