import { ResultPage } from '../../../views/result-page.tsx'
import { AppError } from '../../domain/app-error.ts'
import { type ShownResult, shownResult, shownResultKinds } from '../../domain/shown-result.ts'
import { maySeeResults } from '../../domain/who-may-see.ts'
import { readEvidence } from '../../store/read-evidence.ts'
import { requireWorkOrder } from '../../store/require-work-order.ts'
import type { AppContext } from '../context.ts'
import { idOf } from '../id-of.ts'
import { frameOf, sendPage } from '../send-page.ts'
import { viewer } from '../viewer.ts'
import { leakOfResult } from './leak-of-result.ts'
import { surveyOfResult } from './survey-of-result.ts'
import { trialsOf } from './trials-of.ts'
import { wholeFaceOf } from './whole-face-of.ts'

/** One figure of an order; to a customer only once the order is released. */
export async function showResult(c: AppContext): Promise<Response> {
  const { store } = c.var.shop
  const user = viewer(c)
  const order = requireWorkOrder(store, c.req.param('number') ?? '', user)
  if (!maySeeResults(user, order.stage)) throw new AppError('not-found', 'no-result')
  const evidence = readEvidence(store, order.id)
  const result = requireResult(c, evidence)
  const trials = await trialsOf(c, result)
  const leak = leakOfResult(c, evidence, result)
  const page = (
    <ResultPage
      frame={frameOf(c)}
      orderNumber={order.number}
      sealSerial={evidence.seal.serial}
      result={result}
      agreedRule={evidence.agreedRule}
      shareAtMost={evidence.limitSet.uncertaintyShareAtMost}
      trials={trials}
      wholeFace={await wholeFaceOf(c, evidence, result)}
      survey={surveyOfResult(evidence, result)}
      leak={leak}
      back={
        user.role === 'customer'
          ? { to: 'seal', href: `/seals/${order.sealId}` }
          : { to: 'order', href: `/work-orders/${order.number}` }
      }
    />
  )
  const isFaulty = trials.kind === 'faulty' || (leak?.faults.length ?? 0) > 0
  return sendPage(c, page, isFaulty ? 422 : 200)
}

function requireResult(c: AppContext, evidence: Parameters<typeof shownResult>[0]): ShownResult {
  const kind = shownResultKinds.find((one) => one === c.req.param('kind'))
  const id = idOf(c.req.param('id'), 'no-result')
  const result = kind === undefined ? undefined : shownResult(evidence, kind, id)
  if (result === undefined) throw new AppError('not-found', 'no-result')
  return result
}
