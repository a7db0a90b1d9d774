import type { FC } from 'hono/jsx'
import type { Fault } from '../src/domain/fault.ts'
import type { Instrument } from '../src/domain/instrument.ts'
import type { InstrumentStanding } from '../src/domain/instrument-standing.ts'
import { lampIds } from '../src/science/optics/lamps.ts'
import { Button } from './components/button.tsx'
import { ButtonRow } from './components/button-row.tsx'
import { DataTable } from './components/data-table.tsx'
import { EmptyState } from './components/empty-state.tsx'
import { ErrorSummary } from './components/error-summary.tsx'
import { Facts } from './components/facts.tsx'
import { Field } from './components/field.tsx'
import { Notice } from './components/notice.tsx'
import { PageHead } from './components/page-head.tsx'
import { TextAreaField } from './components/text-area-field.tsx'
import { numberText } from './figures/number-text.ts'
import { lampLabel } from './instrument-form.tsx'
import { InstrumentStatus } from './instrument-status.tsx'
import { ownErrorOf, ownSentence } from './own-error-of.ts'
import { type Frame, Page } from './page.tsx'
import { instrumentSentences } from './words/en/instruments.ts'
import { words } from './words/en.ts'

export type InstrumentTypedThere = {
  readonly calibratedOn: string
  readonly dueOn: string
  readonly certificateNumber: string
  readonly reason: string
}

export type InstrumentPageProps = {
  readonly frame: Frame
  readonly standing: InstrumentStanding
  readonly withdrawalReason: string | null
  readonly isRecorded: boolean
  /** Null for who may look only. */
  readonly form: {
    readonly formKey: string
    readonly typed: InstrumentTypedThere
    readonly faults: readonly Fault[]
  } | null
}

/** One instrument: what it is, how it stands, every calibration it had. */
export const InstrumentPage: FC<InstrumentPageProps> = (props) => {
  const { frame, standing, form, isRecorded } = props
  const { instrument } = standing
  const { instruments: w, trade, chrome } = words
  const isInUse = instrument.withdrawnOn === null
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
        {isRecorded ? <Notice kind="done" text={words.chrome.saved} /> : null}
        <ErrorSummary
          title={chrome.faultsTitle}
          faults={(form?.faults ?? []).map((one) => ({
            fieldId: one.field,
            message: ownSentence(one, instrumentSentences),
          }))}
        />
        <section class="stack" aria-labelledby="facts-title">
          <h2 id="facts-title" class="visually-hidden">
            {w.factsTitle}
          </h2>
          <Facts pairs={factsOf(props)} />
        </section>
        <section class="stack" aria-labelledby="calibrations-title">
          <div class="section-head">
            <h2 id="calibrations-title">{w.calibrationsTitle}</h2>
          </div>
          <Calibrations instrument={instrument} />
          {form === null || !isInUse ? null : <CalibrationForm {...form} id={instrument.id} />}
        </section>
        {form === null ? null : (
          <div class="stack">
            {isInUse ? <WithdrawalForm {...form} id={instrument.id} /> : null}
            <p>
              <a href={`/audit?subject=${encodeURIComponent(`instrument ${instrument.number}`)}`}>
                {w.trail}
              </a>
            </p>
          </div>
        )}
      </div>
    </Page>
  )
}

function factsOf({ standing: { instrument }, withdrawalReason }: InstrumentPageProps) {
  const { instruments: w, trade } = words
  const { lampId, flatToleranceUm, withdrawnOn } = instrument
  const lamp = lampIds.find((one) => one === lampId)
  const stated = (text: string) => (text === '' ? words.chrome.notStated : text)
  return [
    { label: w.serial, value: stated(instrument.serial) },
    ...(lamp === undefined ? [] : [{ label: w.lamp, value: lampLabel(lamp) }]),
    ...(flatToleranceUm === null
      ? []
      : [{ label: w.tolerance, value: `${numberText(flatToleranceUm)} ${trade.unit.um}` }]),
    { label: w.range, value: stated(instrument.range) },
    { label: w.resolution, value: stated(instrument.resolution) },
    ...(withdrawnOn === null ? [] : [{ label: w.withdrawnOn, value: withdrawnOn }]),
    ...(withdrawalReason === null ? [] : [{ label: w.withdrawnBecause, value: withdrawalReason }]),
  ]
}

const Calibrations: FC<{ instrument: Instrument }> = ({ instrument }) => {
  const w = words.instruments
  const { calibrationColumn: column } = w
  if (instrument.calibrations.length === 0) {
    return <EmptyState title={w.noCalibration} text={w.noCalibrationText} />
  }
  return (
    <DataTable
      caption={w.calibrationsCaption}
      columns={[
        { label: column.calibratedOn },
        { label: column.dueOn },
        { label: column.certificateNumber },
      ]}
      rows={instrument.calibrations.toReversed().map((one) => ({
        cells: [
          <span class="number">{one.calibratedOn}</span>,
          <span class="number">{one.dueOn}</span>,
          one.certificateNumber,
        ],
      }))}
    />
  )
}

type FormProps = NonNullable<InstrumentPageProps['form']> & { readonly id: number }

const CalibrationForm: FC<FormProps> = ({ id, formKey, typed, faults }) => {
  const w = words.instruments
  const field = (name: 'calibratedOn' | 'dueOn' | 'certificateNumber') => ({
    name,
    value: typed[name],
    ...ownErrorOf(faults, name, instrumentSentences),
  })
  return (
    <details class="fold" open={faults.some((one) => one.field !== 'reason')}>
      <summary>{w.addCalibration}</summary>
      <form method="post" action={`/instruments/${id}/calibrations`} class="fold-body">
        <input type="hidden" name="formKey" value={`${formKey}-calibration`} />
        <div class="field-pair">
          <Field {...field('calibratedOn')} label={w.calibratedOn} type="date" isRequired />
          <Field {...field('dueOn')} label={w.dueOn} hint={w.dueOnHint} type="date" isRequired />
          <Field {...field('certificateNumber')} label={w.certificateNumber} isRequired />
        </div>
        <ButtonRow>
          <Button label={w.submitCalibration} kind="main" />
        </ButtonRow>
      </form>
    </details>
  )
}

const WithdrawalForm: FC<FormProps> = ({ id, formKey, typed, faults }) => {
  const w = words.instruments
  return (
    <details class="fold" open={faults.some((one) => one.field === 'reason')}>
      <summary>{w.withdraw}</summary>
      <form method="post" action={`/instruments/${id}/withdrawal`} class="fold-body">
        <input type="hidden" name="formKey" value={`${formKey}-withdrawal`} />
        <TextAreaField
          name="reason"
          label={w.withdrawReason}
          hint={w.withdrawHint}
          value={typed.reason}
          isRequired
          {...ownErrorOf(faults, 'reason', instrumentSentences)}
        />
        <ButtonRow>
          <Button label={w.submitWithdrawal} kind="stop" />
        </ButtonRow>
      </form>
    </details>
  )
}
