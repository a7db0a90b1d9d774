import type { Child, FC } from 'hono/jsx'
import type { Evidence } from '../src/domain/evidence.ts'
import { type StripPart, stripParts } from '../src/domain/strip-part.ts'
import { sealSection } from '../src/plots/seal-section.ts'
import { ButtonLink } from './components/button-link.tsx'
import { ButtonRow } from './components/button-row.tsx'
import { PageHead } from './components/page-head.tsx'
import { SvgDrawing } from './components/svg-drawing.tsx'
import { QuarantineStop, StripCaution } from './findings/caution.tsx'
import { FindingCard } from './findings/finding-card.tsx'
import { PartsTable } from './findings/parts-table.tsx'
import { type Frame, Page } from './page.tsx'
import { words } from './words/en.ts'

export type StripPageProps = {
  readonly frame: Frame
  readonly evidence: Evidence
  /** A technician, while the order is open. */
  readonly canRecord: boolean
  /** What else was read on the strip bench: tracks, springs, heights, assembly. */
  readonly more?: Child
}

/** The strip bench of one order: what was seen, part by part, and what becomes of each. */
export const StripPage: FC<StripPageProps> = (props) => {
  const { frame, evidence, canRecord, more } = props
  const { workOrder, seal, findings, partLines } = evidence
  const { number } = workOrder
  const w = words.findings
  const isQuarantined = workOrder.decontamination === 'not-stated'
  const mayRecord = canRecord && !isQuarantined
  const seen = stripParts.filter(
    (part) => isOfSeal(part, evidence) || findings.some((one) => one.part === part),
  )
  return (
    <Page frame={frame} title={`${w.stripTitle} ${number}`} width="wide">
      <PageHead title={w.stripTitle} over={`${number} · ${seal.serial}`} lead={w.stripLead}>
        <a href={`/work-orders/${number}`}>{words.results.back.order}</a>
      </PageHead>
      <div class="stack-loose">
        {isQuarantined ? <QuarantineStop orderNumber={number} /> : <StripCaution />}
        {mayRecord ? (
          <ButtonRow>
            <ButtonLink
              href={`/work-orders/${number}/findings/new`}
              label={w.newFinding}
              kind="main"
              size="large"
            />
            <ButtonLink
              href={`/work-orders/${number}/part-lines/new`}
              label={w.newPart}
              size="large"
            />
          </ButtonRow>
        ) : null}
        <div class="strip-section">
          <SvgDrawing
            drawing={sealSection({ widthPx: 420 })}
            id="strip-section"
            title={w.sectionPicture}
          />
        </div>
        <section class="stack" aria-labelledby="part-by-part">
          <h2 id="part-by-part">{w.partsTitle}</h2>
          <div class="strip-parts">
            {seen.map((part) => (
              <PartFindings part={part} evidence={evidence} mayRecord={mayRecord} />
            ))}
          </div>
        </section>
        <section class="records" aria-labelledby="parts">
          <h2 id="parts">{w.assemblyPartsTitle}</h2>
          {partLines.length === 0 ? (
            <p class="soft">{w.noFates}</p>
          ) : (
            <PartsTable lines={partLines} orderNumber={number} canCorrect={mayRecord} />
          )}
        </section>
        {more}
      </div>
    </Page>
  )
}

function isOfSeal(part: StripPart, { seal }: Evidence): boolean {
  return seal.components.some((one) => one.kind === part)
}

const PartFindings: FC<{ part: StripPart; evidence: Evidence; mayRecord: boolean }> = (props) => {
  const { part, evidence, mayRecord } = props
  const { number } = evidence.workOrder
  const w = words.findings
  const findings = evidence.findings.filter((one) => one.part === part)
  const fates = evidence.partLines.filter((one) => one.part === part && one.replacedById === null)
  return (
    <section class="card stack" aria-labelledby={`part-${part}`}>
      <div class="section-head">
        <h3 id={`part-${part}`}>{w.parts[part]}</h3>
        <p class="soft">
          {fates.length === 0 ? w.noFate : fates.map((one) => w.fates[one.fate]).join(', ')}
        </p>
      </div>
      {findings.length === 0 ? <p class="soft">{w.none}</p> : null}
      {findings.map((one) => (
        <FindingCard
          finding={one}
          orderNumber={number}
          canCorrect={mayRecord}
          photoHref={
            one.photoSha256 === null ? null : `/work-orders/${number}/findings/${one.id}/picture`
          }
        />
      ))}
      {mayRecord ? (
        <ButtonRow>
          <ButtonLink
            href={`/work-orders/${number}/findings/new?part=${part}`}
            label={w.newFinding}
          />
          <ButtonLink
            href={`/work-orders/${number}/part-lines/new?part=${part}`}
            label={w.newPart}
          />
        </ButtonRow>
      ) : null}
    </section>
  )
}
