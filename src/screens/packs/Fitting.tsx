// How each rigid thing goes into a pack: the way, the number that decides it, what would change it, and why.

import { toField, Why } from '../../components/why'
import { fieldPath, itemName, type Plan } from '../../plan'
import { type Formats, kindOfVerdict, type Verdict } from '../../report'
import { type Fitting as Found, fittingOf, fitWords, pairWords } from '../../report/fitting'
import { reckoned } from '../../store'
import { listText } from '../../units'

interface FittingProps {
  packIndex: number
  plan: Plan
  formats: Formats
}

export function Fitting({ packIndex, plan, formats }: FittingProps) {
  const fitting = fittingOf(plan, plan.packs[packIndex]!)
  if (fitting.things === 0) return null
  return (
    <section class="fitting" aria-label="Rigid items in it">
      <p class="fit-title">Rigid items in it</p>
      {fitting.missing.length > 0 ? (
        <NotJudged packIndex={packIndex} fitting={fitting} />
      ) : (
        <>
          <Things {...{ packIndex, formats, fitting }} />
          <p class="hint" data-figures="cited">
            Each alone, with 1 cm to spare each way (our judgement); the litres are judged apart.
          </p>
        </>
      )}
    </section>
  )
}

const FIELDS: Readonly<Record<string, string>> = {
  height: 'innerHeightCm',
  width: 'innerWidthCm',
  depth: 'innerDepthCm',
}

function NotJudged({ packIndex, fitting: { missing, things } }: { packIndex: number; fitting: Found }) {
  const id = reckoned.value?.packIds[packIndex]
  const one = missing.length === 1
  const what = `inner ${listText(missing)} ${one ? 'is' : 'are'} not known`
  const give = () => toField(fieldPath('packs', id ?? '', FIELDS[missing[0]!]!))
  return (
    <>
      <p>
        Not judged: the pack’s {what}. {things === 1 ? 'One item has' : `${things} items have`} a size.
      </p>
      {id === undefined ? null : (
        <button type="button" class="quiet" onClick={give}>
          Give the pack’s inner size
        </button>
      )}
    </>
  )
}

function Things({ packIndex, formats, fitting }: Omit<FittingProps, 'plan'> & { fitting: Found }) {
  return (
    <ul class="fits">
      {fitting.fitted.map(fitted => {
        const { way, because, change } = fitWords(fitted, formats)
        return (
          <li key={fitted.item.id} data-figures="why">
            <p>
              <strong>
                <bdi>{itemName(fitted.item)}</bdi>: {way}.
              </strong>{' '}
              {because} {change}
            </p>
            <Why
              about={{ kind: 'fit', pack: packIndex, item: fitted.item.id }}
              figure={itemName(fitted.item)}
            />
          </li>
        )
      })}
      {fitting.unjudged.map(({ item, missing }) => (
        <li key={item.id}>
          <p>
            <strong>
              <bdi>{itemName(item)}</bdi>: not judged.
            </strong>{' '}
            Its {listText(missing)} {missing.length > 1 ? 'are' : 'is'} not known.
          </p>
        </li>
      ))}
      {fitting.pairs.map(pair => (
        <li key={pair.items.map(item => item.id).join()}>
          <p>{pairWords(pair, formats)}</p>
        </li>
      ))}
    </ul>
  )
}

/** The first verdict on a rigid thing that does not stand, where it is not the one that decides. */
export function FitLine({ others }: { others: readonly Verdict[] }) {
  const verdict = others.find(({ code }) => kindOfVerdict(code).about === 'size')
  if (!verdict) return null
  return (
    <p class="fit-line">
      <strong>{verdict.lead}</strong>
      {verdict.rest}
    </p>
  )
}
