import type { FC } from 'hono/jsx'
import type { InstrumentFile, InstrumentHolder } from '../src/domain/instrument.ts'
import type { AmendedFrom } from '../src/domain/instrument-amendment.ts'
import type { InstrumentStanding } from '../src/domain/instrument-standing.ts'
import { ErrorSummary } from './components/error-summary.tsx'
import { Facts } from './components/facts.tsx'
import { Notice } from './components/notice.tsx'
import { PageHead } from './components/page-head.tsx'
import { InstrumentStatus } from './instrument-status.tsx'
import { AmendmentsSection } from './instruments/amendments-section.tsx'
import { CalibrationForm } from './instruments/calibration-form.tsx'
import { CalibrationsTable } from './instruments/calibrations-table.tsx'
import { FilesSection } from './instruments/files-section.tsx'
import type { InstrumentForms } from './instruments/forms.ts'
import { HolderSection } from './instruments/holder-section.tsx'
import { InstrumentCautions } from './instruments/instrument-caution.tsx'
import { instrumentFacts } from './instruments/instrument-facts.ts'
import type { NumbersTyped } from './instruments/numbers-text.ts'
import { WithdrawalForm } from './instruments/withdrawal-form.tsx'
import { ownSentence } from './own-error-of.ts'
import { type Frame, Page } from './page.tsx'
import { instrumentSentences } from './words/en/instruments.ts'
import { words } from './words/en.ts'

export type InstrumentPageProps = {
  readonly frame: Frame
  readonly standing: InstrumentStanding
  readonly withdrawalReason: string | null
  /** Newest first. */
  readonly holders: readonly InstrumentHolder[]
  readonly files: readonly InstrumentFile[]
  /** Newest first. */
  readonly amendments: readonly AmendedFrom[]
  readonly numbersTyped: NumbersTyped
  readonly isRecorded: boolean
  /** May calibrate and withdraw; everyone who sees the page may hand it on and add a file. */
  readonly mayCalibrate: boolean
  readonly form: Omit<InstrumentForms, 'instrument'>
}

/** One instrument: what it is, how it stands, who holds it, every calibration and file it has. */
export const InstrumentPage: FC<InstrumentPageProps> = (props) => {
  const { frame, standing, form, mayCalibrate } = props
  const { instrument } = standing
  const { instruments: w, trade, chrome } = words
  const forms = { ...form, instrument }
  const mayRecord = mayCalibrate && instrument.withdrawnOn === null
  return (
    <Page frame={frame} title={instrument.number}>
      <PageHead
        title={instrument.number}
        over={trade.instrumentKind[instrument.kind]}
        lead={instrument.name}
      >
        <InstrumentStatus standing={standing} />
      </PageHead>
      <div class="stack-loose">
        {props.isRecorded ? <Notice kind="done" text={chrome.saved} /> : null}
        <ErrorSummary
          title={chrome.faultsTitle}
          faults={form.faults.map((one) => ({
            fieldId: ['asFound', 'asLeft'].includes(one.field) ? `${one.field}-1` : one.field,
            message: ownSentence(one, instrumentSentences),
          }))}
        />
        <InstrumentCautions instrument={instrument} />
        <section class="stack" aria-labelledby="facts-title">
          <h2 id="facts-title" class="visually-hidden">
            {w.factsTitle}
          </h2>
          <Facts pairs={instrumentFacts(instrument, props.withdrawalReason)} />
          <AmendmentsSection
            amendments={props.amendments}
            numbersTyped={props.numbersTyped}
            forms={mayRecord ? forms : null}
          />
        </section>
        <section class="stack" aria-labelledby="calibrations-title">
          <div class="section-head">
            <h2 id="calibrations-title">{w.calibrationsTitle}</h2>
          </div>
          <CalibrationsTable instrument={instrument} />
          {mayRecord ? <CalibrationForm {...forms} /> : null}
        </section>
        <HolderSection holders={props.holders} forms={forms} />
        <FilesSection files={props.files} forms={forms} />
        {mayCalibrate ? (
          <div class="stack">
            {mayRecord ? <WithdrawalForm {...forms} /> : null}
            <p>
              <a href={`/audit?subject=${encodeURIComponent(`instrument ${instrument.number}`)}`}>
                {w.trail}
              </a>
            </p>
          </div>
        ) : null}
      </div>
    </Page>
  )
}
