import type { LimitCase } from './limit-case.ts'
import type { Seal } from './seal.ts'
import type { WorkOrder } from './work-order.ts'

/**
 * What is known of a result of an order, for limits to match.
 * @param of componentId: the face that was measured, null for the machine and the seal as a whole;
 *   boreMm: the chamber bore that was swept, null where it was not stated
 */
export function limitCaseOf(of: {
  readonly seal: Pick<Seal, 'components' | 'shaftDiameterMm'>
  readonly workOrder: Pick<WorkOrder, 'sealedPressureKPa' | 'service' | 'shaftSpeedPerMin'>
  readonly componentId: number | null
  readonly boreMm: number | null
}): LimitCase {
  const { seal, workOrder, componentId, boreMm } = of
  const component = seal.components.find((one) => one.id === componentId)
  const faceMm = component?.outerDiameterMm ?? null
  return {
    faceMaterial: component?.material ?? null,
    componentKind: component?.kind ?? null,
    service: workOrder.service === 'not-stated' ? null : workOrder.service,
    diameterMm: component === undefined ? seal.shaftDiameterMm : faceMm,
    pressureKPa: workOrder.sealedPressureKPa,
    speedPerMin: workOrder.shaftSpeedPerMin,
    sizesMm: { bore: boreMm, shaft: seal.shaftDiameterMm, face: faceMm },
  }
}
