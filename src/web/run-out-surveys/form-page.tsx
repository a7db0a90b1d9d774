import { SurveyFormPage } from '../../../views/survey-form-page.tsx'
import type { SurveyFormValues } from '../../../views/surveys/form-values.ts'
import type { Fault } from '../../domain/fault.ts'
import type { MeasuredValue } from '../../domain/measured-value.ts'
import type { AppContext } from '../context.ts'
import { frameOf, sendPage } from '../send-page.ts'
import type { SurveyDesk } from './desk.ts'

export type SurveyDrawn = {
  readonly values: SurveyFormValues
  readonly formKey: string
  readonly faults: readonly Fault[]
  readonly replaced: MeasuredValue | undefined
}

/** The set-up, fresh, filled, or with what is wrong with it. */
export function sendSurveyForm(
  c: AppContext,
  desk: SurveyDesk,
  { values, faults, formKey, replaced }: SurveyDrawn,
): Promise<Response> {
  const form = {
    orderNumber: desk.workOrder.number,
    sealSerial: desk.seal.serial,
    choice: {
      orderNumber: desk.workOrder.number,
      instruments: desk.instruments,
      exceptions: desk.exceptions,
      day: desk.today,
    },
    typed: { values, faults },
    formKey,
    replaced: replaced ?? null,
  }
  const page = <SurveyFormPage frame={frameOf(c)} form={form} />
  return sendPage(c, page, faults.length > 0 ? 422 : 200)
}
