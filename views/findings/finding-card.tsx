import type { FC } from 'hono/jsx'
import type { Finding } from '../../src/domain/finding.ts'
import { clockSketch } from '../../src/plots/clock-sketch.ts'
import { findingPicture } from '../../src/plots/finding-picture.ts'
import { SvgDrawing } from '../components/svg-drawing.tsx'
import { minuteText } from '../figures/time-text.ts'
import { causeText, findingText } from '../words/en/finding-texts.ts'
import { words } from '../words/en.ts'

/** One finding: its picture, its place, what was seen, and apart from it an opinion. */
export const FindingCard: FC<{
  finding: Finding
  orderNumber: string
  canCorrect: boolean
  photoHref: string | null
}> = ({ finding, orderNumber, canCorrect, photoHref }) => {
  const w = words.findings
  const { fromHour, toHour, radialPlace } = finding
  const cause = causeText(finding)
  const isPlaced = fromHour !== null || radialPlace !== null
  const place = fromHour === null || toHour === null ? null : { fromHour, toHour }
  return (
    <article class={finding.replacedById === null ? 'finding' : 'finding finding-replaced'}>
      <div class="finding-pictures">
        <SvgDrawing drawing={findingPicture(finding.term, 72)} />
        {isPlaced ? (
          <SvgDrawing
            drawing={clockSketch({ sizePx: 72, place, across: radialPlace, hasNumbers: false })}
          />
        ) : null}
      </div>
      <div class="stack-tight">
        <p>
          {finding.replacedById === null ? (
            <strong>{findingText(finding)}</strong>
          ) : (
            <>
              <s>{findingText(finding)}</s> <span class="small">{w.replaced}</span>
            </>
          )}
        </p>
        {finding.observation === '' ? null : <p>{finding.observation}</p>}
        {cause === null ? null : (
          <p class="finding-opinion">
            <span class="small soft">{w.opinionMark}</span> {cause}
          </p>
        )}
        {photoHref === null ? null : (
          <a href={photoHref}>
            <img
              class="finding-photo"
              src={photoHref}
              alt={w.photoAlt(findingText(finding))}
              loading="lazy"
            />
          </a>
        )}
        <p class="small soft">
          {w.recordedBy(finding.recordedByName, minuteText(finding.recordedAt))}{' '}
          {canCorrect && finding.replacedById === null ? (
            <a href={`/work-orders/${orderNumber}/findings/new?replaces=${finding.id}`}>
              {w.correct}
            </a>
          ) : null}
        </p>
      </div>
    </article>
  )
}
