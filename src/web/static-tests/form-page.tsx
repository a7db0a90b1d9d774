import { minuteText } from '../../../views/figures/time-text.ts'
import { StaticTestFormPage } from '../../../views/static-test-form-page.tsx'
import type { StaticTestFormValues } from '../../../views/static-tests/form-values.ts'
import { appliedLimitOf } from '../../domain/applied-limit-of.ts'
import type { Fault } from '../../domain/fault.ts'
import type { StaticTest } from '../../domain/static-test.ts'
import type { AppContext } from '../context.ts'
import { frameOf, sendPage } from '../send-page.ts'
import { answerOf } from './answer-of.ts'
import type { StaticTestDesk } from './desk.ts'

export type Drawn = {
  readonly values: StaticTestFormValues
  readonly formKey: string
  readonly faults: readonly Fault[]
  readonly replaced: StaticTest | undefined
}

/** The form, fresh, filled, or with what is wrong with it. */
export function sendStaticTestForm(
  c: AppContext,
  desk: StaticTestDesk,
  drawn: Drawn,
): Promise<Response> {
  const { values, faults, formKey, replaced } = drawn
  const form = {
    orderNumber: desk.workOrder.number,
    sealSerial: desk.seal.serial,
    limitSetName: desk.limitSet.name,
    limits: (['static-drop', 'static-leak-rate'] as const).flatMap((one) => {
      const applied = appliedLimitOf(one, desk, { componentId: null })
      return applied === undefined ? [] : [applied.limit]
    }),
    choice: {
      orderNumber: desk.workOrder.number,
      instruments: desk.instruments,
      exceptions: desk.exceptions,
      day: desk.now.slice(0, 10),
    },
    now: minuteText(desk.now),
    typed: { values, faults },
    formKey,
    answer: answerOf(values, desk, replaced),
    carried: replaced?.budgetInput ?? null,
    replaced: replaced ?? null,
  }
  const page = <StaticTestFormPage frame={frameOf(c)} form={form} />
  return sendPage(c, page, faults.length > 0 ? 422 : 200)
}
