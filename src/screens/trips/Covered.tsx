// The fewest packs that together do for every trip, and the trips for which none does.

import { Why } from '../../components/why'
import type { Formats } from '../../report'
import { type AllTrips, priceText } from '../../report/compare-packs'
import type { NamedPlan } from '../../report/why'

export function Covered({
  result: { cover, names, rows, plans },
  trips,
  formats,
}: {
  result: AllTrips
  trips: readonly NamedPlan[]
  formats: Formats
}) {
  if (!cover.ok)
    return (
      <p>
        {cover.packs} packs are too many to look at every set of them; up to {cover.limit} can be. Choose
        fewer trips, or delete packs you no longer consider.
      </p>
    )
  const { packs, uncovered } = cover
  const severalSetups = (name: string) => rows.some(row => row.pack === name && row.named)
  const priceOf = ({ name, price }: (typeof packs)[number]) => {
    const currency = plans[0]?.packs.find(pack => pack.name === name)?.currency ?? null
    return priceText(price, currency)
  }
  if (rows.length === 0)
    return <p>These trips have no packs yet: add one under Packs, or check a tag at the shop.</p>
  return (
    <section aria-labelledby="fewest" data-figures="why">
      <h3 id="fewest">The fewest suitable packs</h3>
      {packs.length === 0 ? (
        <p>No pack is suitable for any of these trips.</p>
      ) : (
        <ul class="reasons">
          {packs.map(pack => (
            <li key={pack.name}>
              <strong>
                <bdi>{pack.name}</bdi>
              </strong>
              , {formats.gear(pack.massKg)}, {priceOf(pack)}: for{' '}
              {pack.trips.map(({ trip, setup }, i) => (
                <span key={trip}>
                  {i > 0 ? ', ' : ''}
                  <bdi>{names[trip]}</bdi>
                  {severalSetups(pack.name) ? (
                    <>
                      {' '}
                      (<bdi>{setup}</bdi>)
                    </>
                  ) : null}
                </span>
              ))}
            </li>
          ))}
        </ul>
      )}
      {packs.length ? (
        <>
          <p class="hint">As few packs as can be; among equals the lower price, then the lower mass.</p>
          <Why about={{ kind: 'cover', trips }} figure="Why these" />
        </>
      ) : null}
      {uncovered.length && packs.length ? (
        <p>
          No pack is suitable for{' '}
          {uncovered.map((trip, i) => (
            <span key={trip}>
              {i > 0 ? ', ' : ''}
              <bdi>{names[trip]}</bdi>
            </span>
          ))}
          .
        </p>
      ) : null}
    </section>
  )
}
