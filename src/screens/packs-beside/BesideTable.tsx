// A column for each pack: its body, its figures, its answer for each trip. On a phone a figure's name stands over its row.

import type { ComponentChildren } from 'preact'
import { useMemo } from 'preact/hooks'
import { useMedia } from '../../components/frame'
import { BodyPicture } from '../../components/graphics'
import { Why } from '../../components/why'
import { type DraftPack, tripName } from '../../plan'
import type { Formats } from '../../report'
import type { AllTrips, Beside } from '../../report/compare-packs'
import { type TripDocument, tripList } from '../../store'
import { useAllTrips } from '../trips'
import { besideTrips, takeOut } from './chosen'

interface BesideTableProps {
  /** Each with one set-up. */
  chosen: readonly DraftPack[]
  found: Beside
  trip: TripDocument
  formats: Formats
}

export function BesideTable({ chosen, found, trip, formats }: BesideTableProps) {
  const judged = useAnswers(chosen, trip, formats)
  const rows = new Map(judged?.rows.map((row, i) => [row.pack, { ...row, at: i, cells: row.cells }]))
  const ways = judged?.names.map((name, i) => ({ name, plan: judged.plans[i]! })) ?? []
  const columns = chosen.length
  return (
    <>
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: a box that scrolls has to be reachable by keyboard */}
      <section class="scroll" aria-label="Packs and figures" tabIndex={0}>
        <table class="beside-table">
          <caption class="unseen">Packs side by side</caption>
          <thead>
            <Line columns={columns} what={null}>
              {chosen.map(({ id, name }) => (
                <th key={id} scope="col">
                  <bdi>{name}</bdi>
                </th>
              ))}
            </Line>
          </thead>
          <Bodies chosen={chosen} found={found} formats={formats} />
          <Lines columns={columns} what="Take out" hidden>
            {chosen.map(({ id, name }, i) => (
              // By its place: the focus stays once one is taken out.
              <td key={i}>
                <button
                  type="button"
                  class="link"
                  aria-label={`Take out ${name}`}
                  onClick={() =>
                    takeOut(
                      id,
                      chosen.map(each => each.id),
                    )
                  }
                >
                  Take out
                </button>
              </td>
            ))}
          </Lines>
          {judged?.names.map((name, i) => (
            <Lines key={`${i} ${name}`} columns={columns} what={`For ${name}`} figures="why">
              {chosen.map(({ id, name: pack }) => {
                const row = rows.get(pack!)
                return (
                  <td key={id}>
                    {row ? (
                      <>
                        <strong class="answer">
                          <span aria-hidden="true">{row.cells[i]!.mark} </span>
                          {row.cells[i]!.answer}
                        </strong>
                        <Why
                          about={{ kind: 'trips', trips: ways, setup: row.at }}
                          figure="Why"
                          title={`${pack}, for ${name}`}
                        />
                      </>
                    ) : (
                      'Not judged: its litres or mass are missing.'
                    )}
                  </td>
                )
              })}
            </Lines>
          ))}
          {found.rows.map(({ what, cells }) => (
            <Lines key={what} columns={columns} what={what} figures="cited">
              {cells.map(({ text, isBest }, i) => (
                <td key={chosen[i]!.id}>
                  {isBest ? (
                    <>
                      <strong>{text}</strong> <span class="best">best</span>
                    </>
                  ) : (
                    text
                  )}
                </td>
              ))}
            </Lines>
          ))}
        </table>
      </section>
      <ul class="differences" data-figures="cited">
        {found.differences.map(text => (
          <li key={text}>{text}</li>
        ))}
      </ul>
      {judged?.notes.map(note => (
        <p key={note} class="hint">
          {note}
        </p>
      ))}
      <p class="hint" data-figures="cited">
        Open a pack to see how its figures are calculated.
      </p>
    </>
  )
}

/** Each trip judged with these packs alone. */
function useAnswers(chosen: readonly DraftPack[], open: TripDocument, formats: Formats): AllTrips | null {
  const all = tripList.value
  const ticked = besideTrips.value
  const trips = useMemo(
    () =>
      all
        .filter(({ id }) => ticked.get(id) ?? id === open.id)
        .map(({ draft, typed }) => ({
          name: tripName(draft),
          draft: { ...draft, packs: [...chosen] },
          typed,
        })),
    [all, ticked, open.id, chosen],
  )
  return useAllTrips(trips, formats)
}

interface LinesProps {
  columns: number
  what: string
  /** The name is for who hears it only. */
  hidden?: boolean
  figures?: 'why' | 'cited'
  children: ComponentChildren
}

/** A row of its own group, headed at its side where there is room, else above. */
function Lines({ figures, ...line }: LinesProps) {
  return (
    <tbody data-figures={figures}>
      <Line {...line} />
    </tbody>
  )
}

const WIDE = '(min-width: 40rem)'

function Line({
  columns,
  what,
  hidden = false,
  children,
}: Omit<LinesProps, 'what'> & { what: string | null }) {
  const wide = useMedia(WIDE)
  if (wide)
    return (
      <tr>
        {what === null ? <td /> : <th scope="row">{hidden ? <span class="unseen">{what}</span> : what}</th>}
        {children}
      </tr>
    )
  return (
    <>
      {what === null || hidden ? null : (
        <tr>
          <th scope="rowgroup" colSpan={columns} class="over">
            {what}
          </th>
        </tr>
      )}
      <tr>{children}</tr>
    </>
  )
}

/** To one scale, each filled to the likely need of the open trip. */
function Bodies({ chosen, found: { needLitres }, formats }: Omit<BesideTableProps, 'trip'>) {
  const bodies = chosen.map(({ bodyLitres, collarLitres = 0, innerHeightCm = null }) =>
    bodyLitres ? { bodyLitres, collarLitres, innerHeightCm } : null,
  )
  const sizes = bodies.flatMap(body => (body ? body.bodyLitres + body.collarLitres : []))
  if (sizes.length === 0) return null
  const scaleLitres = Math.max(...sizes, needLitres ?? 0)
  return (
    <Lines
      columns={chosen.length}
      what={needLitres === null ? 'To one scale' : `To one scale, filled to ${formats.litres(needLitres)}`}
      figures="cited"
    >
      {bodies.map((body, i) => (
        <td key={chosen[i]!.id}>
          {body ? (
            <BodyPicture
              {...{ body, needLitres, scaleLitres }}
              label={`${chosen[i]!.name}: ${formats.litres(body.bodyLitres)}${overText(body, needLitres, formats)}`}
            />
          ) : (
            'no litres yet'
          )}
        </td>
      ))}
    </Lines>
  )
}

function overText(
  { bodyLitres, collarLitres }: { bodyLitres: number; collarLitres: number },
  needLitres: number | null,
  formats: Formats,
): string {
  if (needLitres === null) return ''
  const over = needLitres - bodyLitres - collarLitres
  return over > 0
    ? `, ${formats.litres(over)} too small for what is filled in`
    : `, ${formats.litres(-over)} left above what is filled in`
}
