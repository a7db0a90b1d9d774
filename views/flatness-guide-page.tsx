import type { FC } from 'hono/jsx'
import { PageHead } from './components/page-head.tsx'
import { FlatnessGuide } from './flatness/guide.tsx'
import { guideFormId } from './flatness/guide-steps.tsx'
import { type Frame, Page } from './page.tsx'
import { words } from './words/en.ts'

/** The guide to light bands on a page of its own: to be read before, or without script. */
export const FlatnessGuidePage: FC<{ frame: Frame }> = ({ frame }) => {
  const w = words.flatnessGuide
  return (
    <Page frame={frame} title={w.title}>
      <PageHead title={w.title} lead={w.lead} />
      <form id={guideFormId}></form>
      <FlatnessGuide />
    </Page>
  )
}
