import type { WorkOrder } from '../../src/domain/work-order.ts'

export function buildWorkOrder(changes: Partial<WorkOrder> = {}): WorkOrder {
  return {
    id: 1,
    number: 'W-2026-0001',
    customerId: 1,
    sealId: 1,
    limitSetId: 1,
    customerOrder: '',
    reasonForRemoval: '',
    decontamination: 'not-needed',
    lastFluid: '',
    sealedPressureKPa: null,
    serviceTemperatureC: null,
    shaftSpeedPerMin: null,
    service: 'not-stated',
    receivedAt: '2026-11-20T08:00:00.000Z',
    dueOn: null,
    stage: 'received',
    isInvented: true,
    ...changes,
  }
}
