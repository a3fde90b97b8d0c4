// The chart as a table, where the table of the packs does not stand below it.

import { PictureTable } from '../../../components/graphics'
import { ANSWERS, type Formats } from '../../../report'
import { figureText, PACK_FIGURES, type PackLine } from '../../../report/compare-packs'
import type { AxesChosen } from './axes'

interface TableProps {
  lines: readonly PackLine[]
  axes: AxesChosen
  formats: Formats
  hasAnswers: boolean
}

export function ChartTable({ lines, axes: { x, y }, formats, hasAnswers }: TableProps) {
  return (
    <PictureTable
      caption={`${PACK_FIGURES[x].name} and ${PACK_FIGURES[y].name.toLowerCase()}`}
      heads={['Pack', PACK_FIGURES[x].name, PACK_FIGURES[y].name, ...(hasAnswers ? ['Answer'] : [])]}
      rows={{
        count: lines.length,
        make: index => {
          const { name, figures, currency, answer } = lines[index]!
          const cell = (figure: AxesChosen['x']) =>
            figureText(figure, figures[figure] ?? null, { formats, currency })
          const told = answer ? ANSWERS[answer].words : 'Not judged yet'
          return [<bdi>{name}</bdi>, cell(x), cell(y), ...(hasAnswers ? [told] : [])]
        },
      }}
    />
  )
}
