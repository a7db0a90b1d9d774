import type { FC } from 'hono/jsx'
import type { CertifiedSurvey } from '../../src/domain/certified-survey.ts'
import { DataTable } from '../components/data-table.tsx'
import { surveyRowText } from '../words/en/survey-pairs.ts'
import { words } from '../words/en.ts'

/** Every reading that stands, as typed, folded away. */
export const SurveyReadings: FC<{ survey: CertifiedSurvey }> = ({ survey }) => {
  const { readings: w } = words.surveyFigures
  const turnCount = Math.max(0, ...survey.rows.map((one) => one.typed.length))
  const isTwoEnds = survey.planes.length === 0
  return (
    <details class="fold">
      <summary>{`${w.title}, ${w.in(w.units[survey.readingUnit])}`}</summary>
      <div class="fold-body">
        <DataTable
          caption={w.title}
          isCaptionHidden
          keepsColumns
          columns={[
            { label: w.position },
            ...Array.from({ length: turnCount }, (_, index) => ({
              label: isTwoEnds ? w.repeat(index + 1) : w.turn(index + 1),
              kind: 'number' as const,
            })),
          ]}
          rows={survey.rows.map((row) => ({ cells: [surveyRowText(survey, row), ...row.typed] }))}
        />
      </div>
    </details>
  )
}
