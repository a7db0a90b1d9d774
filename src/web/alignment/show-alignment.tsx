import type { AlignedSurvey } from '../../../views/alignment/page-props.ts'
import { AlignmentPage } from '../../../views/alignment-page.tsx'
import { AppError } from '../../domain/app-error.ts'
import { comparedTracks } from '../../domain/compared-tracks.ts'
import type { LimitSet } from '../../domain/limit-set.ts'
import { limitSetStanding } from '../../domain/limit-set-standing.ts'
import { orderAlignment, type SpeakingSurvey } from '../../domain/order-alignment.ts'
import { maySeeResults } from '../../domain/who-may-see.ts'
import { listLimitSets } from '../../store/list-limit-sets.ts'
import { readEvidence } from '../../store/read-evidence.ts'
import { requireWorkOrder } from '../../store/require-work-order.ts'
import type { AppContext } from '../context.ts'
import { frameOf, sendPage } from '../send-page.ts'
import { today } from '../today.ts'
import { viewer } from '../viewer.ts'

/** Shaft, register and faces in one picture: for the staff, and for a customer once released. */
export function showAlignment(c: AppContext): Promise<Response> {
  const { store } = c.var.shop
  const user = viewer(c)
  const order = requireWorkOrder(store, c.req.param('number') ?? '', user)
  if (!maySeeResults(user, order.stage)) throw new AppError('not-found', 'no-result')
  const evidence = readEvidence(store, order.id)
  const isStaff = user.role !== 'customer'
  const sets = isStaff
    ? askedSets(listLimitSets(store), evidence.limitSet, today(c))
    : [evidence.limitSet]
  const { alignment, surveys, found } = orderAlignment(evidence, sets)
  const { workOrder, seal } = evidence
  const page = (
    <AlignmentPage
      frame={frameOf(c)}
      form={{
        orderNumber: workOrder.number,
        sealSerial: seal.serial,
        alignment,
        surveys: surveys.map((one) => alignedOf(one, isStaff)),
        tracks: comparedTracks(evidence, found),
        back:
          user.role === 'customer'
            ? { to: 'seal', href: `/seals/${seal.id}` }
            : { to: 'order', href: `/work-orders/${workOrder.number}` },
      }}
    />
  )
  return sendPage(c, page)
}

/** The order's own set, whatever became of it, and those in force. */
function askedSets(all: readonly LimitSet[], own: LimitSet, day: string): readonly LimitSet[] {
  const inForce = all.filter((one) => limitSetStanding(one, all, day) === 'in-force')
  return [own, ...inForce.filter((one) => one.id !== own.id)]
}

/** Limit sets are the house's own, and may be what it agreed with another customer. */
function alignedOf(speaking: SpeakingSurvey, isStaff: boolean): AlignedSurvey {
  const { judgedValue, certified, conflict } = speaking
  const { measured, judged } = judgedValue
  const others = isStaff ? conflict : null
  return { measuredValueId: measured.id, survey: certified, judged, conflict: others }
}
