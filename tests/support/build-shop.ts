import type { Customer } from '../../src/domain/customer.ts'
import type { Equipment } from '../../src/domain/equipment.ts'
import type { Instrument, NewInstrument } from '../../src/domain/instrument.ts'
import type { LimitSet, NewLimitSet } from '../../src/domain/limit-set.ts'
import type { NewSeal, Seal } from '../../src/domain/seal.ts'
import type { User } from '../../src/domain/user.ts'
import type { NewWorkOrder, WorkOrder } from '../../src/domain/work-order.ts'
import { addCalibration } from '../../src/store/add-calibration.ts'
import { addEquipment } from '../../src/store/add-equipment.ts'
import { addInstrument } from '../../src/store/add-instrument.ts'
import { addLimitSet } from '../../src/store/add-limit-set.ts'
import { addLimitSetStep } from '../../src/store/add-limit-set-step.ts'
import { addSeal } from '../../src/store/add-seal.ts'
import { addWorkOrder } from '../../src/store/add-work-order.ts'
import type { Store } from '../../src/store/open.ts'
import { requireCustomer } from '../../src/store/require-customer.ts'
import { requireInstrument } from '../../src/store/require-instrument.ts'
import { buildCalibration, buildInstrument } from './build-instrument.ts'
import { buildLimitSet } from './build-limit-set.ts'
import { actorOf, type Cast, castAt, castOf, operator } from './cast.ts'
import { openTestStore } from './open-test-store.ts'

export type Shop = {
  readonly store: Store
  readonly cast: Cast
  /** Cora's company. */
  readonly customer: Customer
  readonly equipment: Equipment
  readonly seal: Seal
  readonly limitSet: LimitSet
  readonly lamp: Instrument
  readonly flat: Instrument
  readonly gauge: Instrument
  readonly thermometer: Instrument
  /** Just received. */
  readonly workOrder: WorkOrder
}

/** A small workshop with one seal received: the least that every act can be done upon. */
export function buildShop(store: Store = openTestStore()): Shop {
  const cast = castOf(store)
  const customer = requireCustomer(store, cast.cora.customerId!)
  const position = { description: 'Juice pump', serviceFluid: 'Raw juice' }
  const equipment = addEquipment(
    store,
    { customerId: customer.id, tag: 'P-101', ...position },
    operator,
  )
  const seal = addSeal(store, newSeal(customer.id, { equipmentId: equipment.id }), operator)
  const limitSet = approved(store, addLimitSet(store, newLimitSet(), operator), cast.ian)
  const instruments = {
    lamp: addInCalibration(store, { kind: 'lamp', number: 'L-01', lampId: 'helium' }),
    flat: addInCalibration(store, {
      kind: 'optical-flat',
      number: 'F-01',
      flatToleranceUm: 0.05,
    }),
    gauge: addInCalibration(store, { kind: 'pressure-gauge', number: 'G-01' }),
    thermometer: addInCalibration(store, { kind: 'thermometer', number: 'T-01' }),
  }
  const order = newWorkOrder({ customerId: customer.id, sealId: seal.id, limitSetId: limitSet.id })
  const workOrder = addWorkOrder(store, order, operator)
  return { store, cast, customer, equipment, seal, limitSet, ...instruments, workOrder }
}

/** All five components; the faces are measured, the rest is not. */
export function newSeal(customerId: number, changes: Partial<NewSeal> = {}): NewSeal {
  const none = {
    outerDiameterMm: null,
    innerDiameterMm: null,
    noseHeightMm: null,
    minimumNoseHeightMm: null,
  }
  const face = { ...none, outerDiameterMm: 68, innerDiameterMm: 58 }
  return {
    customerId,
    equipmentId: null,
    serial: 'S-1',
    drawing: 'D-100',
    drawingRevision: 'A',
    arrangement: 'single',
    shaftDiameterMm: 50,
    size: '50',
    components: [
      { ...face, kind: 'rotating-face', material: 'carbon-graphite', noseHeightMm: 3.2 },
      { ...none, kind: 'rotating-secondary', material: 'FKM O-ring' },
      { ...none, kind: 'spring', material: 'stainless wire' },
      { ...face, kind: 'stationary-seat', material: 'silicon-carbide-sintered' },
      { ...none, kind: 'stationary-secondary', material: 'FKM O-ring' },
    ],
    ...changes,
  }
}

/** Flatness 0.8814 µm and a drop of 14 kPa in 300 s from at most 28 L. */
export function newLimitSet(changes: Partial<NewLimitSet> = {}): NewLimitSet {
  const { id: _, steps: _steps, limits, ...row } = buildLimitSet()
  const fresh = limits.map(({ id: _id, limitSetId: _set, ...limit }) => limit)
  return { ...row, limits: fresh, ...changes }
}

/** The set as it is once an inspector, who did not write it, has approved it. */
export function approved(
  store: Store,
  { id, datedOn }: Pick<LimitSet, 'id' | 'datedOn'>,
  by: User,
): LimitSet {
  const step = { limitSetId: id, step: 'approved', effectiveOn: datedOn, reason: '', by } as const
  return addLimitSetStep(store, step, actorOf(by))
}

export function newWorkOrder(
  of: Pick<NewWorkOrder, 'customerId' | 'sealId' | 'limitSetId'> & Partial<NewWorkOrder>,
): NewWorkOrder {
  return {
    customerOrder: 'PO 4711',
    reasonForRemoval: 'leaks',
    decontamination: 'stated-clean',
    lastFluid: 'raw juice',
    sealedPressureKPa: 400,
    serviceTemperatureC: 60,
    shaftSpeedPerMin: 1450,
    service: 'not-stated',
    receivedAt: castAt,
    dueOn: '2026-12-15',
    isInvented: false,
    ...of,
  }
}

/** An instrument that is in calibration through the year of the tests. */
export function addInCalibration(
  store: Store,
  fresh: Pick<NewInstrument, 'kind' | 'number'> & Partial<NewInstrument>,
): Instrument {
  const {
    id: _,
    calibrations: _calibrations,
    withdrawnOn: _withdrawn,
    ...rest
  } = buildInstrument(fresh.kind)
  const row = {
    ...rest,
    name: `${fresh.kind} of the bench`,
    serial: '1',
    lampId: null,
    flatToleranceUm: null,
    ...fresh,
  }
  const { id } = addInstrument(store, row, operator)
  const calibration = { instrumentId: id, calibratedOn: '2026-01-15', dueOn: '2027-01-15' }
  const { id: _id, ...plain } = buildCalibration()
  addCalibration(store, { ...plain, ...calibration }, operator)
  return requireInstrument(store, id)
}
