import type { FlatnessFormValues } from '../../../views/flatness/form-values.ts'
import { type FlatnessForm, FlatnessFormPage } from '../../../views/flatness-form-page.tsx'
import { appliedLimitOf } from '../../domain/applied-limit-of.ts'
import type { Fault } from '../../domain/fault.ts'
import type { FlatnessReading } from '../../domain/flatness.ts'
import { type Component, faceKinds } from '../../domain/seal.ts'
import type { AppContext } from '../context.ts'
import { frameOf, sendPage } from '../send-page.ts'
import { answerOf } from './answer-of.ts'
import type { FlatnessDesk } from './desk.ts'
import { spreadsBeside } from './reader-spread.ts'

export type Drawn = {
  readonly values: FlatnessFormValues
  readonly formKey: string
  readonly faults: readonly Fault[]
  readonly replaced: FlatnessReading | undefined
}

/** The form, fresh, filled, or with what is wrong with it. */
export function sendFlatnessForm(
  c: AppContext,
  desk: FlatnessDesk,
  drawn: Drawn,
): Promise<Response> {
  const form: FlatnessForm = {
    ...drawn,
    replaced: drawn.replaced ?? null,
    orderNumber: desk.workOrder.number,
    sealSerial: desk.seal.serial,
    limitSetName: desk.limitSet.name,
    faces: faceChoices(desk),
    choice: {
      orderNumber: desk.workOrder.number,
      instruments: desk.instruments,
      exceptions: desk.exceptions,
      day: desk.today,
    },
    answer: answerOf(drawn.values, desk, drawn.replaced),
    carried: drawn.replaced?.budgetInput?.repeatability ?? null,
    spreads: spreadsBeside(desk, drawn.replaced?.id).filter((one) => one.sees === 'taper'),
    isNext: c.req.query('recorded') !== undefined,
  }
  const page = <FlatnessFormPage frame={frameOf(c, ['stepper'])} form={form} />
  return sendPage(c, page, drawn.faults.length > 0 ? 422 : 200)
}

/** The faces of an order, each with the limit that it is held against. */
export function faceChoices(desk: FlatnessDesk): FlatnessForm['faces'] {
  return desk.faces.flatMap((one) => faceChoice(one, desk))
}

function faceChoice(component: Component, desk: FlatnessDesk): FlatnessForm['faces'] {
  const kind = faceKinds.find((one) => one === component.kind)
  if (kind === undefined) return []
  const { id, material } = component
  const applied = appliedLimitOf('flatness', desk, { componentId: id })
  return [{ id, kind, material, limit: applied?.limit ?? null }]
}
