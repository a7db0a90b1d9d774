import { describe, expect, test } from 'vitest'
import { addCalibration } from '../../src/store/add-calibration.ts'
import { addCustomer } from '../../src/store/add-customer.ts'
import { addEquipment } from '../../src/store/add-equipment.ts'
import { addInstrument } from '../../src/store/add-instrument.ts'
import { addLimitSet } from '../../src/store/add-limit-set.ts'
import { addSeal } from '../../src/store/add-seal.ts'
import { defaultLimitSet } from '../../src/store/default-limit-set.ts'
import { findCustomerByName } from '../../src/store/find-customer-by-name.ts'
import { findSealBySerial } from '../../src/store/find-seal-by-serial.ts'
import { hasInventedData } from '../../src/store/has-invented-data.ts'
import { listCustomers } from '../../src/store/list-customers.ts'
import { listEquipment } from '../../src/store/list-equipment.ts'
import { listInstruments } from '../../src/store/list-instruments.ts'
import { listLimitSets } from '../../src/store/list-limit-sets.ts'
import { listSeals } from '../../src/store/list-seals.ts'
import { requireCustomer } from '../../src/store/require-customer.ts'
import { requireEquipment } from '../../src/store/require-equipment.ts'
import { requireInstrument } from '../../src/store/require-instrument.ts'
import { requireLimitSet } from '../../src/store/require-limit-set.ts'
import { requireSeal } from '../../src/store/require-seal.ts'
import { withdrawInstrument } from '../../src/store/withdraw-instrument.ts'
import { newCalibration, newInstrument } from '../support/build-instrument.ts'
import {
  addInCalibration,
  approved,
  buildShop,
  newLimitSet,
  newSeal,
} from '../support/build-shop.ts'
import { castOf, operator } from '../support/cast.ts'
import { openTestStore } from '../support/open-test-store.ts'

const mill = { name: 'Änder Paper Mill', address: '2 Quay', contact: 'x', isInvented: false }

describe('customers', () => {
  test('are listed by name and found without regard to capitals', () => {
    const store = openTestStore()
    const added = addCustomer(store, { ...mill, name: 'An early mill' }, operator)
    expect(listCustomers(store).map((one) => one.name)).toEqual([
      'An early mill',
      'Invented Dairy',
      'Invented Sugar Works',
    ])
    expect(findCustomerByName(store, 'AN EARLY MILL')).toEqual(added)
    expect(findCustomerByName(store, 'nobody')).toBeUndefined()
    expect(requireCustomer(store, added.id)).toEqual(added)
  })

  test('have each a name of their own', () => {
    const store = openTestStore()
    const again = { ...mill, name: 'invented dairy' }
    expect(() => addCustomer(store, again, operator)).toThrow('conflict: name-taken')
    expect(() => requireCustomer(store, 99)).toThrow('not-found: no-customer')
  })

  test('that are invented make the store hold invented data', () => {
    const store = openTestStore()
    addCustomer(store, mill, operator)
    expect(hasInventedData(store)).toBe(false)
    addCustomer(store, { ...mill, name: 'other', isInvented: true }, operator)
    expect(hasInventedData(store)).toBe(true)
  })
})

describe('equipment and seals', () => {
  test('belong to one customer, and a tag or serial names one of them there', () => {
    const { store, cast, customer, equipment, seal } = buildShop()
    const dairyId = cast.olga.customerId ?? 0
    const tagged = { customerId: dairyId, tag: 'P-101', description: '', serviceFluid: 'milk' }
    expect(addEquipment(store, tagged, operator)).toMatchObject(tagged)
    expect(() => addEquipment(store, tagged, operator)).toThrow('conflict: tag-taken')
    expect(addSeal(store, newSeal(dairyId), operator).customerId).toBe(dairyId)
    expect(() => addSeal(store, newSeal(dairyId), operator)).toThrow('conflict: serial-taken')
    expect(listEquipment(store, customer.id)).toEqual([equipment])
    expect(listSeals(store, { customerId: customer.id })).toEqual([seal])
    expect(listSeals(store)).toHaveLength(2)
    expect(listSeals(store).every((one) => one.components.length === 5)).toBe(true)
    expect(findSealBySerial(store, customer.id, 'S-1')).toEqual(seal)
    expect(findSealBySerial(store, customer.id, 'S-2')).toBeUndefined()
    expect(requireEquipment(store, equipment.id)).toEqual(equipment)
    expect(() => requireEquipment(store, 99)).toThrow('not-found: no-equipment')
    expect(() => requireSeal(store, 99)).toThrow('not-found: no-seal')
  })

  test('never mix two customers, whatever the code above says', () => {
    const { store, cast, equipment } = buildShop()
    const stranger = newSeal(cast.olga.customerId ?? 0, { equipmentId: equipment.id })
    expect(() => addSeal(store, stranger, operator)).toThrow('not-found: no-equipment')
    const raw = `INSERT INTO seal (customer_id, equipment_id, serial, drawing, drawing_revision,
      arrangement, shaft_diameter_mm, size) VALUES (2, ${equipment.id}, 'X', '', '', '', 1.0, '')`
    expect(() => store.raw.exec(raw)).toThrow('FOREIGN KEY constraint failed')
  })

  test('keep what is not measured as nothing, not as zero', () => {
    const { seal } = buildShop()
    expect(seal.components.map((one) => one.outerDiameterMm)).toEqual([68, null, null, 68, null])
    expect(seal.components[0]?.minimumNoseHeightMm).toBeNull()
  })
})

describe('limit sets', () => {
  test('come newest first, with their limits as they were written', () => {
    const { store, limitSet } = buildShop()
    const second = addLimitSet(store, newLimitSet({ version: 2, datedOn: '2026-06-01' }), operator)
    expect(listLimitSets(store)).toEqual([second, limitSet])
    expect(defaultLimitSet(store, '2026-11-25')).toEqual(limitSet)
    const inForce = approved(store, second, castOf(store).ian)
    expect(defaultLimitSet(store, '2026-05-31')).toEqual(limitSet)
    expect(defaultLimitSet(store, '2026-06-01')).toEqual(inForce)
    expect(requireLimitSet(store, limitSet.id).limits[0]).toMatchObject({
      upper: 0.8814,
      asWritten: '3 helium light bands',
      basis: 'house rule',
      source: 'test',
    })
  })

  test('keep the start that a drop is written for, and refuse one that is none', () => {
    const { store } = buildShop()
    const [flatness, drop] = newLimitSet().limits
    const setOf = (version: number, startAtLeastKPaGauge: number) =>
      newLimitSet({ version, limits: [flatness!, { ...drop!, startAtLeastKPaGauge }] })
    const { id } = addLimitSet(store, setOf(2, 170), operator)
    const starts = requireLimitSet(store, id).limits.map((one) => one.startAtLeastKPaGauge)
    expect(starts).toEqual([null, 170])
    for (const wrong of [0, Number.POSITIVE_INFINITY]) {
      expect(() => addLimitSet(store, setOf(3, wrong), operator)).toThrow('CHECK')
    }
  })

  test('are replaced by a new version, never written over', () => {
    const { store } = buildShop()
    expect(() => addLimitSet(store, newLimitSet(), operator)).toThrow('conflict: version-taken')
    expect(() => requireLimitSet(store, 99)).toThrow('not-found: no-limit-set')
    expect(() => defaultLimitSet(openTestStore(), '2026-11-25')).toThrow(
      'conflict: no-limit-set-yet',
    )
  })
})

describe('instruments', () => {
  test('are listed by number with their calibrations, newest last', () => {
    const { store, lamp, gauge } = buildShop()
    const calibration = { instrumentId: lamp.id, certificateNumber: 'K-0' }
    const dates = { calibratedOn: '2025-01-10', dueOn: '2026-01-10' }
    addCalibration(store, newCalibration({ ...calibration, ...dates }), operator)
    const numbers = requireInstrument(store, lamp.id).calibrations.map((c) => c.certificateNumber)
    expect(numbers).toEqual(['K-0', 'K-1'])
    expect(listInstruments(store).map((one) => one.number)).toEqual([
      'F-01',
      'G-01',
      'L-01',
      'T-01',
    ])
    expect(listInstruments(store, { kind: 'pressure-gauge' })).toEqual([gauge])
    expect(() => requireInstrument(store, 99)).toThrow('not-found: no-instrument')
  })

  test('are withdrawn once, and then calibrated no more', () => {
    const { store, lamp } = buildShop()
    const withdrawal = { instrumentId: lamp.id, on: '2026-11-25', reason: 'dropped' }
    expect(withdrawInstrument(store, withdrawal, operator).withdrawnOn).toBe('2026-11-25')
    expect(() => withdrawInstrument(store, withdrawal, operator)).toThrow('instrument-withdrawn')
    const calibration = { instrumentId: lamp.id, certificateNumber: 'K-9' }
    const dates = { calibratedOn: '2026-11-26', dueOn: '2027-11-26' }
    expect(() =>
      addCalibration(store, newCalibration({ ...calibration, ...dates }), operator),
    ).toThrow('conflict: instrument-withdrawn')
  })

  test('have a number of their own and a due date after the calibration', () => {
    const { store, lamp } = buildShop()
    expect(() => addInCalibration(store, { kind: 'lamp', number: 'L-01', lampId: 'x' })).toThrow(
      'conflict: instrument-number-taken',
    )
    const day = { calibratedOn: '2026-11-25', dueOn: '2026-11-25' }
    const calibration = { instrumentId: lamp.id, certificateNumber: 'K-9', ...day }
    expect(() => addCalibration(store, newCalibration(calibration), operator)).toThrow(
      'invalid: due-not-later',
    )
  })

  test('that are lamps name their lamp, and nothing else does', () => {
    const { store } = buildShop()
    const without = newInstrument('lamp', { number: 'L-9', lampId: null })
    expect(() => addInstrument(store, without, operator)).toThrow('CHECK constraint failed')
  })
})

test('the cast has the ids and roles that the tests count on', () => {
  const cast = castOf(openTestStore())
  expect(
    Object.entries(cast)
      .map(([name, user]) => `${user.id} ${name} ${user.role}`)
      .sort(),
  ).toEqual([
    '1 tess technician',
    '2 tom technician',
    '3 ian inspector',
    '4 ina inspector',
    '5 cora customer',
    '6 olga customer',
    '7 mo manager',
  ])
  expect(cast.cora.customerId).not.toBe(cast.olga.customerId)
})
