import type { FC } from 'hono/jsx'
import type { Certificate } from '../src/domain/certificate.ts'
import { ButtonLink } from './components/button-link.tsx'
import { ButtonRow } from './components/button-row.tsx'
import { Facts } from './components/facts.tsx'
import { PageHead } from './components/page-head.tsx'
import { VerdictMark } from './components/verdict-mark.tsx'
import { minuteText } from './figures/time-text.ts'
import { CertifiedFindings } from './findings/certified-findings.tsx'
import { LapLines } from './lap-lines.tsx'
import { type Frame, Page } from './page.tsx'
import { RecordCorrections } from './record-corrections.tsx'
import { SealResults } from './seal-results.tsx'
import { hasStripRecords, StripLines } from './strip-lines.tsx'
import { CertifiedSurveys } from './survey-figures/certified-surveys.tsx'
import { words } from './words/en.ts'

const w = words.certificates

/** One certificate: what it certifies, and the way to its document. */
export const CertificatePage: FC<{
  frame: Frame
  certificate: Certificate
  sealId: number
  isStaff: boolean
}> = ({ frame, certificate, sealId, isStaff }) => {
  const { number, record, sha256 } = certificate
  const { verdict } = record
  return (
    <Page frame={frame} title={`${w.one} ${number}`}>
      <PageHead over={w.one} title={number} lead={w.revision(certificate.revision)}>
        <VerdictMark size="large" verdict={verdict} word={words.trade.overall[verdict]} />
      </PageHead>
      <div class="stack">
        <ButtonRow>
          <ButtonLink
            kind="main"
            size="large"
            href={`/certificates/${number}/document.pdf`}
            label={w.download}
          />
          <ButtonLink size="large" href={`/verify/${number}`} label={w.verifyLink} />
          <ButtonLink size="large" href={`/seals/${sealId}`} label={w.sealPage} />
          {isStaff ? (
            <ButtonLink
              size="large"
              href={`/work-orders/${record.workOrder.number}`}
              label={w.facts.order}
            />
          ) : null}
        </ButtonRow>
        <Facts pairs={factsOf(certificate)} />
        <section class="card">
          <h2>{w.results}</h2>
          <SealResults
            faces={record.faces}
            staticTests={record.staticTests}
            measuredValues={record.measuredValues}
          />
          <p class="soft">{w.resultsMore}</p>
        </section>
        <CertifiedFindings findings={record.findings ?? []} parts={record.parts ?? []} />
        <CertifiedSurveys surveys={record.surveys ?? []} orderNumber={record.workOrder.number} />
        {record.lapping.length === 0 ? null : (
          <section class="card">
            <h2>{words.lapping.certificate.heading}</h2>
            <LapLines lapping={record.lapping} />
            <p class="soft">{words.lapping.certificate.note}</p>
          </section>
        )}
        {hasStripRecords(record) ? (
          <section class="card">
            <h2>{words.stripRecords.certificate.heading}</h2>
            <StripLines {...record} />
          </section>
        ) : null}
        <RecordCorrections corrections={record.corrections} />
        <Facts
          layout="rows"
          pairs={[{ label: w.facts.sha256, value: <code class="hash">{sha256}</code> }]}
        />
      </div>
    </Page>
  )
}

function factsOf({ record }: Certificate) {
  const { seal, workOrder, release, limitSet, equipment } = record
  const said = (text: string) => (text === '' ? words.chrome.notStated : text)
  const testers = [...new Set(record.testers.map((one) => one.name))].join(', ')
  return [
    { label: w.facts.issued, value: minuteText(record.issuedAt) },
    { label: w.facts.released, value: w.person(release.byName, release.byDepartment) },
    { label: w.facts.customer, value: record.customer.name },
    { label: w.facts.order, value: workOrder.number },
    { label: w.facts.customerOrder, value: said(workOrder.customerOrder) },
    { label: w.facts.seal, value: seal.serial },
    { label: w.facts.drawing, value: said(`${seal.drawing} ${seal.drawingRevision}`.trim()) },
    { label: w.facts.equipment, value: equipment?.tag ?? words.chrome.notStated },
    { label: w.facts.testers, value: said(testers) },
    {
      label: w.facts.limitSet,
      value: words.inspection.limitSetName(limitSet.name, limitSet.version, limitSet.datedOn),
    },
    ...optional(w.facts.acknowledgement, release.acknowledgement),
    ...optional(w.facts.changeReason, record.changeReason),
  ]
}

function optional(label: string, value: string) {
  return value === '' ? [] : [{ label, value }]
}
