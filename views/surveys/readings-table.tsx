import type { FC } from 'hono/jsx'
import { spotKey } from '../../src/domain/survey-spots.ts'
import { DataTable } from '../components/data-table.tsx'
import { minuteText } from '../figures/time-text.ts'
import { Struck } from '../order-record.tsx'
import { words } from '../words/en.ts'
import type { SurveyPageProps } from './page-props.ts'
import { spotDetail, spotTitle } from './spot-text.ts'

/** Every reading in the order it came; what a later one of the same position overtook is struck. */
export const SurveyReadings: FC<{
  page: Pick<SurveyPageProps, 'survey' | 'progress' | 'orderNumber'>
  canRead: boolean
}> = ({ page: { survey, progress, orderNumber }, canRead }) => {
  const { surveys: w, trade } = words
  const base = `/work-orders/${orderNumber}/run-out-surveys/${survey.id}`
  const unit = trade.unit[survey.setUp.unit]
  return (
    <div class="stack">
      <DataTable
        caption={w.spots}
        columns={[
          { label: w.columns.position },
          { label: w.columns.value, kind: 'number' },
          { label: w.columns.by },
          ...(canRead
            ? [{ label: w.columns.again, kind: 'act' as const, isLabelHidden: true }]
            : []),
        ]}
        rows={survey.readings.map((one) => {
          const isCurrent = progress.current.get(spotKey(one))?.id === one.id
          const detail = spotDetail(survey, one)
          const value = `${one.typed} ${unit}`
          return {
            mark: isCurrent ? undefined : ('quiet' as const),
            cells: [
              detail === '' ? spotTitle(survey, one) : `${spotTitle(survey, one)}, ${detail}`,
              isCurrent ? value : <Overtaken text={value} />,
              `${one.recordedByName}, ${minuteText(one.recordedAt)}`,
              ...(canRead
                ? [isCurrent ? <a href={`${base}?spot=${spotKey(one)}`}>{w.spotLink}</a> : '']
                : []),
            ],
          }
        })}
      />
      <p class="small soft">{w.overtakenHint}</p>
    </div>
  )
}

const Overtaken: FC<{ text: string }> = ({ text }) => (
  <>
    <Struck isReplaced>{text}</Struck> <span class="small">{words.surveys.overtaken}</span>
  </>
)
