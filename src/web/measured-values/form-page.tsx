import {
  type MeasuredForm,
  MeasuredValueFormPage,
} from '../../../views/measured-value-form-page.tsx'
import type { MeasuredFormValues } from '../../../views/measured-values/form-values.ts'
import { appliedLimitOf } from '../../domain/applied-limit-of.ts'
import { measuredCharacteristics } from '../../domain/characteristic.ts'
import type { Fault } from '../../domain/fault.ts'
import { familyOf, type MeasuredFamily } from '../../domain/measured-family.ts'
import type { MeasuredValue } from '../../domain/measured-value.ts'
import { type Component, faceKinds } from '../../domain/seal.ts'
import type { AppContext } from '../context.ts'
import { frameOf, sendPage } from '../send-page.ts'
import { answerOf } from './answer-of.ts'
import type { MeasuredDesk } from './desk.ts'
import { familyAsked } from './form-values.ts'

export type Drawn = {
  readonly values: MeasuredFormValues
  readonly formKey: string
  readonly faults: readonly Fault[]
  readonly replaced: MeasuredValue | undefined
}

/** The form, fresh, filled, or with what is wrong with it. */
export function sendMeasuredForm(
  c: AppContext,
  desk: MeasuredDesk,
  drawn: Drawn,
): Promise<Response> {
  const { values, faults, formKey, replaced } = drawn
  const family = familyAsked(values.characteristic)
  const readings = values.readings.map((value) => ({ value }))
  const form: MeasuredForm = {
    orderNumber: desk.workOrder.number,
    sealSerial: desk.seal.serial,
    family,
    limitSetName: desk.limitSet.name,
    limits: limitsOf(family, desk),
    faces: desk.faces.flatMap(asChoice),
    choice: {
      orderNumber: desk.workOrder.number,
      instruments: desk.instruments,
      exceptions: desk.exceptions,
      day: desk.today,
    },
    typed: { values, faults },
    formKey,
    answer: answerOf({ ...values, readings }, desk),
    replaced: replaced ?? null,
  }
  const page = <MeasuredValueFormPage frame={frameOf(c)} form={form} />
  return sendPage(c, page, faults.length > 0 ? 422 : 200)
}

function asChoice(component: Component): MeasuredForm['faces'] {
  const kind = faceKinds.find((one) => one === component.kind)
  return kind === undefined ? [] : [{ id: component.id, kind, material: component.material }]
}

/** What can apply: of each face for what belongs to one, else of the machine. */
function limitsOf(family: MeasuredFamily, desk: MeasuredDesk): MeasuredForm['limits'] {
  const places = family === 'dial' ? [null] : desk.faces.flatMap(asChoice)
  return measuredCharacteristics
    .filter((one) => familyOf[one] === family)
    .flatMap((characteristic) =>
      places.flatMap((face) => {
        const applied = appliedLimitOf(characteristic, desk, { componentId: face?.id ?? null })
        return applied === undefined ? [] : [{ limit: applied.limit, face: face?.kind ?? null }]
      }),
    )
}
