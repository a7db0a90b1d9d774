import { QuarantinePage } from '../../../views/quarantine-page.tsx'
import type { AppContext } from '../context.ts'
import { frameOf, sendPage } from '../send-page.ts'
import type { StripDesk } from './desk.ts'

/** In place of a form, where nobody has said yet that the seal is clean; null: somebody has. */
export function sendQuarantine(
  c: AppContext,
  { evidence }: StripDesk,
  title: string,
): Promise<Response> | null {
  const { decontamination, number } = evidence.workOrder
  if (decontamination !== 'not-stated') return null
  return sendPage(c, <QuarantinePage frame={frameOf(c)} title={title} orderNumber={number} />, 409)
}
