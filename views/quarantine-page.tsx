import type { FC } from 'hono/jsx'
import { ButtonLink } from './components/button-link.tsx'
import { ButtonRow } from './components/button-row.tsx'
import { Caution } from './components/caution.tsx'
import { PageHead } from './components/page-head.tsx'
import { type Frame, Page } from './page.tsx'
import { words } from './words/en.ts'

/** Stands where a form would: nothing is read on a seal of which nobody said that it is clean. */
export const QuarantinePage: FC<{ frame: Frame; title: string; orderNumber: string }> = (props) => {
  const { frame, title, orderNumber } = props
  const w = words.stripRecords
  return (
    <Page frame={frame} title={`${title} ${orderNumber}`}>
      <PageHead title={title} over={orderNumber} />
      <div class="stack">
        <Caution sign={words.chrome.caution} title={w.quarantineTitle}>
          <p>{w.quarantine}</p>
        </Caution>
        <ButtonRow>
          <ButtonLink
            href={`/work-orders/${orderNumber}`}
            label={w.state}
            kind="main"
            size="large"
          />
        </ButtonRow>
      </div>
    </Page>
  )
}
