import { type ComparedPair, type FaceLay, faceLays } from '../../../views/whole-faces/page-props.ts'
import { WholeFacesPage } from '../../../views/whole-faces-page.tsx'
import { AppError } from '../../domain/app-error.ts'
import { type CombinationRefusal, combinationRefusal } from '../../domain/combination-refusal.ts'
import { combineWholeFaces } from '../../domain/combine-whole-faces.ts'
import { combinedParts } from '../../domain/combined-parts.ts'
import { compareWholeFaces } from '../../domain/compare-whole-faces.ts'
import { lappedBetween } from '../../domain/lapped-between.ts'
import { orderActs } from '../../domain/order-acts.ts'
import type { AppContext } from '../context.ts'
import { newFormKey } from '../record-once.ts'
import { frameOf, sendPage } from '../send-page.ts'
import { viewer } from '../viewer.ts'
import { listedReading, type WholeFacesDesk } from './desk.ts'

/** The page of two readings; with `refused` as the answer to a combination that is not allowed. */
export function sendWholeFaces(
  c: AppContext,
  desk: WholeFacesDesk,
  page: { readonly lay?: string | undefined; readonly refused?: CombinationRefusal } = {},
): Promise<Response> {
  const { evidence, faces, face, readings } = desk
  const { workOrder, seal } = evidence
  const lay = layOf(page.lay)
  const isCustomer = viewer(c).role === 'customer'
  const markup = (
    <WholeFacesPage
      frame={frameOf(c)}
      form={{
        orderNumber: workOrder.number,
        sealSerial: seal.serial,
        faces,
        face,
        readings: readings.map((one) => listedReading(evidence, one)),
        pair: pairOf(c, desk, lay),
        lay,
        formKey: newFormKey(c.var.shop.randomBytes),
        refused: page.refused ?? null,
        back: isCustomer
          ? { to: 'seal', href: `/seals/${seal.id}` }
          : { to: 'order', href: `/work-orders/${workOrder.number}` },
      }}
    />
  )
  return sendPage(c, markup, page.refused === undefined ? 200 : 422)
}

function pairOf(
  c: AppContext,
  desk: WholeFacesDesk,
  lay: FaceLay | undefined,
): ComparedPair | null {
  const { evidence, pair } = desk
  if (pair === null) return null
  const [first, second] = pair
  const between = lappedBetween(first, second, evidence)
  const isBeforeAfter = first.condition !== second.condition || between.cycleCount > 0
  // A lapped face has another form: it is turned only where somebody asks for it.
  const isTurned = lay === undefined ? !isBeforeAfter : lay === 'by-form'
  return {
    first: listedReading(evidence, first),
    second: listedReading(evidence, second),
    comparison: compareWholeFaces(first, second, { isTurned }),
    between,
    isBeforeAfter,
    combination: combinationOf(c, desk, pair),
  }
}

function layOf(asked: string | undefined): FaceLay | undefined {
  if (asked === undefined || asked === '') return undefined
  const lay = faceLays.find((one) => one === asked)
  if (lay === undefined) throw new AppError('not-found', 'no-page')
  return lay
}

function combinationOf(
  c: AppContext,
  { evidence }: WholeFacesDesk,
  pair: NonNullable<WholeFacesDesk['pair']>,
): ComparedPair['combination'] {
  if (!orderActs(evidence.workOrder, viewer(c).role).canRecord) return null
  const refusal = combinationRefusal(pair, evidence)
  if (refusal !== null) return { kind: 'refused', refusal }
  const parts = combinedParts(pair, evidence.flatnessReadings)
  return { kind: 'offered', combined: combineWholeFaces(parts) }
}
