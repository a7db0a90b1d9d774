import { LapCycleFormPage, type LapForm } from '../../../views/lap-cycle-form-page.tsx'
import type { LapFormValues } from '../../../views/lap-cycles/form-values.ts'
import type { LapFace } from '../../../views/lap-cycles/questions.tsx'
import type { Fault } from '../../domain/fault.ts'
import type { LapCycle } from '../../domain/lap-cycle.ts'
import { type Component, faceKinds } from '../../domain/seal.ts'
import type { AppContext } from '../context.ts'
import { frameOf, sendPage } from '../send-page.ts'
import { lapAnswerOf } from './answer-of.ts'
import type { LapDesk } from './desk.ts'
import { offeredPlates } from './form-values.ts'

export type LapDrawn = {
  readonly values: LapFormValues
  readonly formKey: string
  readonly faults: readonly Fault[]
  readonly replaced: LapCycle | undefined
}

/** The form, fresh, filled, or with what is wrong with it. */
export function sendLapForm(c: AppContext, desk: LapDesk, drawn: LapDrawn): Promise<Response> {
  const { values, faults, formKey, replaced } = drawn
  const { workOrder, seal } = desk.evidence
  const replacesId = replaced === undefined ? '' : String(replaced.id)
  const form: LapForm = {
    orderNumber: workOrder.number,
    sealSerial: seal.serial,
    faces: desk.faces.flatMap(asFace),
    plates: offeredPlates(desk),
    typed: { values, faults },
    formKey,
    answer: lapAnswerOf({ ...values, replacesId }, desk),
    replaced: replaced ?? null,
  }
  const page = <LapCycleFormPage frame={frameOf(c)} form={form} />
  return sendPage(c, page, faults.length > 0 ? 422 : 200)
}

function asFace(component: Component): readonly LapFace[] {
  const kind = faceKinds.find((one) => one === component.kind)
  return kind === undefined ? [] : [{ id: component.id, kind, material: component.material }]
}
