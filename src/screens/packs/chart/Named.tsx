// The pack that is named on the chart, in a line under it; it keeps its place while none is.

import { Why } from '../../../components/why'
import { ANSWERS, type Formats } from '../../../report'
import { figureText, PACK_FIGURES, type PackLine } from '../../../report/compare-packs'
import type { AxesChosen } from './axes'
import { lit } from './lit'

interface TextProps {
  axes: AxesChosen
  formats: Formats
  hasAnswers: boolean
}

const part = (line: PackLine, name: AxesChosen['x'], formats: Formats) => {
  const value = line.figures[name]
  const words = PACK_FIGURES[name].name.toLowerCase()
  return value === undefined
    ? `${words} not known`
    : `${words} ${figureText(name, value, { formats, currency: line.currency })}`
}

const answerText = ({ answer }: PackLine) => (answer ? ANSWERS[answer].words.toLowerCase() : 'not judged yet')

/** "Model 24: does, main body 57 L, load it can carry 20.6 kg". */
export const lineText = (line: PackLine, { axes: { x, y }, formats, hasAnswers }: TextProps): string =>
  `${line.name}: ${[...(hasAnswers ? [answerText(line)] : []), part(line, x, formats), part(line, y, formats)].join(', ')}`

interface NamedProps extends TextProps {
  byKey: ReadonlyMap<string, PackLine>
  onOpen: (key: string) => void
}

export function Named({ byKey, axes, formats, hasAnswers, onOpen }: NamedProps) {
  const line = byKey.get(lit.value ?? '')
  if (!line) return <p class="named hint">Tap a mark for its name. Drag to show a part only.</p>
  const { answer, setup } = line
  return (
    <p class="named" data-figures="why">
      {hasAnswers ? <span aria-hidden="true">{answer ? ANSWERS[answer].mark : '–'}</span> : null}
      <strong>
        <bdi>{line.name}</bdi>
      </strong>
      {hasAnswers ? <span>{answerText(line)}</span> : null}
      {[axes.x, axes.y].map((name, i) => (
        <span key={i} data-figures={PACK_FIGURES[name].isTyped ? 'typed' : undefined}>
          {part(line, name, formats)}
        </span>
      ))}
      {setup === null || !hasAnswers ? null : (
        <Why about={{ kind: 'bears', setup }} figure="Why" title={line.name} />
      )}
      <button type="button" class="link" onClick={() => onOpen(line.key)}>
        Open
      </button>
    </p>
  )
}
