import type { FC } from 'hono/jsx'
import { LimitsAndSurveys } from './alignment/limits-and-surveys.tsx'
import { MovesSection } from './alignment/moves-section.tsx'
import type { AlignmentForm } from './alignment/page-props.ts'
import { PictureSection } from './alignment/picture-section.tsx'
import { TrackSection } from './alignment/track-section.tsx'
import { Caution } from './components/caution.tsx'
import { EmptyState } from './components/empty-state.tsx'
import { PageHead } from './components/page-head.tsx'
import { type Frame, Page } from './page.tsx'
import { words } from './words/en.ts'

/** Shaft, register and face of a machine in one picture, what to move where, and what limits say. */
export const AlignmentPage: FC<{ frame: Frame; form: AlignmentForm }> = ({ frame, form }) => {
  const w = words.alignment
  const { orderNumber, sealSerial, surveys, alignment, tracks, back } = form
  const isEmpty = surveys.length === 0 && tracks.length === 0
  return (
    <Page frame={frame} title={`${w.title} ${orderNumber}`} width="wide">
      <PageHead title={w.title} over={[orderNumber, sealSerial].join(' · ')} lead={w.lead}>
        <a href={back.href}>{words.results.back[back.to]}</a>
      </PageHead>
      <div class="stack-loose">
        {isEmpty ? <EmptyState title={w.none} text={w.noneText} /> : null}
        {surveys.length === 0 ? null : (
          <>
            <div class="alignment-desk">
              <PictureSection alignment={alignment} />
              <div class="stack-loose">
                <Caution sign={words.chrome.caution} title={w.caution.title}>
                  {w.caution.lines.map((line) => (
                    <p>{line}</p>
                  ))}
                </Caution>
                <MovesSection form={form} />
              </div>
            </div>
            <LimitsAndSurveys form={form} />
          </>
        )}
        <TrackSection tracks={tracks} />
      </div>
    </Page>
  )
}
