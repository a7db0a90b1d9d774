import type { FC } from 'hono/jsx'
import { PageHead } from './components/page-head.tsx'
import { QuarantineStop } from './findings/caution.tsx'
import { type Frame, Page } from './page.tsx'

/** Stands where a form would: nothing is read on a seal of which nobody said that it is clean. */
export const QuarantinePage: FC<{ frame: Frame; title: string; orderNumber: string }> = (props) => {
  const { frame, title, orderNumber } = props
  return (
    <Page frame={frame} title={`${title} ${orderNumber}`}>
      <PageHead title={title} over={orderNumber} />
      <QuarantineStop orderNumber={orderNumber} />
    </Page>
  )
}
