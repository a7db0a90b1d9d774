import { InspectionPage } from '../../../views/inspection-page.tsx'
import type { ExceptionAnswerTyped } from '../../../views/use-exceptions.tsx'
import { listOpenUseExceptions } from '../../store/list-open-use-exceptions.ts'
import { listWorkOrders } from '../../store/list-work-orders.ts'
import type { AppContext } from '../context.ts'
import { newFormKey } from '../record-once.ts'
import { frameOf, sendPage } from '../send-page.ts'
import { today } from '../today.ts'
import { viewer } from '../viewer.ts'
import { waitingLines } from './waiting-lines.ts'

/** What waits for an inspector; with `refused` as the answer to the form of an exception. */
export function sendInspection(
  c: AppContext,
  refused: ExceptionAnswerTyped | null = null,
): Promise<Response> {
  const { store, randomBytes } = c.var.shop
  const by = viewer(c)
  const form = { viewerId: by.id, formKey: newFormKey(randomBytes), today: today(c) }
  const page = (
    <InspectionPage
      frame={frameOf(c)}
      waiting={waitingLines(c)}
      refused={listWorkOrders(store, { stage: 'refused', limit: 20 }).items}
      released={listWorkOrders(store, { stage: 'released', limit: 10 }).items}
      exceptions={{
        open: listOpenUseExceptions(store),
        form: by.role === 'inspector' ? form : null,
        refused,
        isAnswered: c.req.query('answered') !== undefined,
      }}
    />
  )
  return sendPage(c, page, refused === null ? 200 : 422)
}
