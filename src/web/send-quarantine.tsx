import { QuarantinePage } from '../../views/quarantine-page.tsx'
import type { WorkOrder } from '../domain/work-order.ts'
import type { AppContext } from './context.ts'
import { frameOf, sendPage } from './send-page.ts'

/** In place of a form, where nobody has said yet that the seal is clean; null: somebody has. */
export function sendQuarantine(
  c: AppContext,
  { decontamination, number }: Pick<WorkOrder, 'decontamination' | 'number'>,
  title: string,
): Promise<Response> | null {
  if (decontamination !== 'not-stated') return null
  return sendPage(c, <QuarantinePage frame={frameOf(c)} title={title} orderNumber={number} />, 409)
}
