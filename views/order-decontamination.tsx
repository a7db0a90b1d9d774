import type { FC } from 'hono/jsx'
import type { Fault } from '../src/domain/fault.ts'
import { type DecontaminationState, decontaminationStates } from '../src/domain/work-order.ts'
import { Button } from './components/button.tsx'
import { ButtonRow } from './components/button-row.tsx'
import { Caution } from './components/caution.tsx'
import { ChoiceCards } from './components/choice-cards.tsx'
import { Field } from './components/field.tsx'
import { errorOf } from './error-of.ts'
import { words } from './words/en.ts'

/** What usual practice asks of a returned seal; the rules of the site stand above it. */
export const ResidueCaution: FC = () => {
  const { residues } = words.workOrders
  return (
    <Caution sign={words.chrome.caution} title={residues.title}>
      <p>{residues.quarantine}</p>
      <p>{residues.rules}</p>
    </Caution>
  )
}

export type DecontaminationTyped = { readonly state: string; readonly lastFluid: string }

/** The two questions about the last fluid, at receipt and afterwards. */
export const DecontaminationFields: FC<{
  typed: DecontaminationTyped
  faults: readonly Fault[]
}> = ({ typed, faults }) => {
  const { trade, workOrders: w } = words
  return (
    <>
      <ChoiceCards
        name="decontamination"
        legend={w.decontaminationLegend}
        value={typed.state}
        choices={decontaminationStates.map((value: DecontaminationState) => ({
          value,
          label: trade.decontamination[value],
          detail: w.decontaminationDetail[value],
        }))}
        {...errorOf(faults, 'decontamination')}
      />
      <Field
        name="lastFluid"
        label={w.lastFluid}
        hint={w.lastFluidHint}
        value={typed.lastFluid}
        {...errorOf(faults, 'lastFluid')}
      />
    </>
  )
}

/** States afterwards whether a seal is clean; folded away once it is stated. */
export const DecontaminationForm: FC<{
  number: string
  isStated: boolean
  formKey: string
  typed: DecontaminationTyped
  faults: readonly Fault[]
}> = ({ number, isStated, formKey, typed, faults }) => {
  const w = words.workOrders
  const form = (
    <form method="post" action={`/work-orders/${number}/decontamination`}>
      <input type="hidden" name="formKey" value={`${formKey}-decontamination`} />
      <DecontaminationFields typed={typed} faults={faults} />
      <ButtonRow>
        <Button label={w.decontaminationSubmit} kind={isStated ? 'plain' : 'main'} />
      </ButtonRow>
    </form>
  )
  if (isStated) {
    return (
      <details class="fold" open={faults.length > 0}>
        <summary>{w.decontaminationChange}</summary>
        <div class="fold-body">{form}</div>
      </details>
    )
  }
  return (
    <section class="card stack" id="decontamination">
      <h2>{w.decontaminationTitle}</h2>
      <ResidueCaution />
      {form}
    </section>
  )
}
