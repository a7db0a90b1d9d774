import type { FC } from 'hono/jsx'
import type { Certificate } from '../src/domain/certificate.ts'
import { ButtonLink } from './components/button-link.tsx'
import { DataTable } from './components/data-table.tsx'
import { EmptyState } from './components/empty-state.tsx'
import { PageHead } from './components/page-head.tsx'
import { VerdictMark } from './components/verdict-mark.tsx'
import { dayText } from './figures/time-text.ts'
import { type Frame, Page } from './page.tsx'
import { words } from './words/en.ts'

const w = words.certificates

/** Certificates, newest first: all of them for the staff, their own for a customer. */
export const CertificatesPage: FC<{
  frame: Frame
  certificates: readonly Certificate[]
  isCustomer: boolean
}> = ({ frame, certificates, isCustomer }) => (
  <Page frame={frame} title={w.title}>
    <PageHead title={w.title} lead={isCustomer ? w.leadCustomer : w.leadStaff}>
      <ButtonLink href="/verify" label={w.checkAny} />
    </PageHead>
    {certificates.length === 0 ? (
      <EmptyState title={w.none} text={isCustomer ? w.noneCustomer : w.noneStaff} />
    ) : isCustomer ? (
      <ul class="job-list">{certificates.map(job)}</ul>
    ) : (
      <DataTable
        caption={w.title}
        isCaptionHidden
        columns={[
          { label: w.columns.number },
          { label: w.columns.issued },
          { label: w.columns.seal },
          { label: w.columns.customer },
          { label: w.columns.order },
          { label: w.columns.verdict },
          { label: w.columns.document, kind: 'act' },
        ]}
        rows={certificates.map((one) => ({ cells: cellsOf(one) }))}
      />
    )}
  </Page>
)

/** A line that a thumb can hit: the customer looks from a phone. */
function job({ number, issuedAt, record }: Certificate) {
  return (
    <li class="job">
      <a class="job-link" href={`/certificates/${number}`}>
        <span class="job-number">{number}</span>
        <span class="job-what">
          {w.sealOf(record.seal.serial)}
          <span class="job-detail">
            {`${w.issuedOn(dayText(issuedAt))} · ${record.workOrder.number}`}
          </span>
        </span>
        <span class="job-state">
          <VerdictMark verdict={record.verdict} word={words.trade.overall[record.verdict]} />
        </span>
      </a>
    </li>
  )
}

function cellsOf({ number, issuedAt, record }: Certificate) {
  return [
    <a href={`/certificates/${number}`}>{number}</a>,
    dayText(issuedAt),
    record.seal.serial,
    record.customer.name,
    record.workOrder.number,
    <VerdictMark verdict={record.verdict} word={words.trade.overall[record.verdict]} />,
    <a href={`/certificates/${number}/document.pdf`} aria-label={w.pdfOf(number)}>
      {w.pdf}
    </a>,
  ]
}
