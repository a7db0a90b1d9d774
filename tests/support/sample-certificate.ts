import type { CertificateRecord } from '../../src/domain/certificate.ts'
import { type CertificateInput, certificateRecord } from '../../src/domain/certificate-record.ts'
import type { Evidence } from '../../src/domain/evidence.ts'
import type { Instrument, InstrumentKind, InstrumentUse } from '../../src/domain/instrument.ts'
import { buildCustomer } from './build-customer.ts'
import { buildEquipment } from './build-equipment.ts'
import { buildEvidence } from './build-evidence.ts'
import { buildFlatnessReading } from './build-flatness-reading.ts'
import { buildInstrumentUse } from './build-instrument.ts'
import { buildLimit, buildLimitSet } from './build-limit-set.ts'
import { buildHandOver } from './build-release.ts'
import { buildComponent, buildSeal } from './build-seal.ts'
import { buildStaticTest } from './build-static-test.ts'
import { buildWorkOrder } from './build-work-order.ts'

const number = 'C-2026-0042-K7QX3M'

/** A certificate's input as the release hands it over; an invented workshop on a tidal river. */
export function sampleInput(changes: Partial<CertificateInput> = {}): CertificateInput {
  return {
    evidence: ordinaryEvidence(),
    decision: {
      byId: 9,
      byName: 'Ian Ives',
      byDepartment: 'Inspection',
      at: '2026-03-19T13:20:00.000Z',
    },
    number,
    revision: 0,
    issuedAt: '2026-03-19T13:20:00.000Z',
    verifyUrl: `https://ringproof.example/verify/${number}`,
    workshop: {
      name: 'Tidewater Seal Workshop',
      address: 'Old Ropewalk 4, Mudflat Quay, Estuary Town',
    },
    acknowledgement: '',
    ...changes,
  }
}

/** Convex as found and refused, flat as left; one static test within its limits. */
export function ordinaryRecord(changes: Partial<CertificateInput> = {}): CertificateRecord {
  return certificateRecord(sampleInput(changes))
}

export function ordinaryEvidence(changes: Partial<Evidence> = {}): Evidence {
  return buildEvidence({
    workOrder: buildWorkOrder({
      number: 'W-2026-0042',
      customerOrder: 'PO 4500-118',
      reasonForRemoval: 'Leak at the drain, 7 months in service',
      decontamination: 'stated-clean',
      lastFluid: 'Raw juice',
      sealedPressureKPa: 450,
      serviceTemperatureC: 72,
      shaftSpeedPerMin: 1450,
      receivedAt: '2026-03-12T07:45:00.000Z',
      stage: 'handed-over',
    }),
    customer: buildCustomer({
      name: 'Saltmarsh Sugar Works',
      address: 'Canal Road 11, Saltmarsh',
      contact: 'Cora Ebb, maintenance',
    }),
    equipment: buildEquipment({
      tag: 'P-217A',
      description: 'Raw juice pump',
      serviceFluid: 'Raw juice, 15 % dissolved solids',
    }),
    seal: sampleSeal(),
    limitSet: sampleLimits(),
    flatnessReadings: [
      reading({
        id: 1,
        condition: 'as-found',
        pattern: 'convex',
        directions: counts('4.5', '4'),
        recordedAt: '2026-03-13T08:05:00.000Z',
      }),
      reading({
        id: 2,
        condition: 'as-left',
        pattern: 'convex',
        directions: counts('1.25', '1'),
        soakMin: 45,
        temperatureC: 20.5,
        recordedAt: '2026-03-17T09:10:00.000Z',
      }),
      reading({
        id: 3,
        componentId: 12,
        faceKind: 'stationary-seat',
        condition: 'as-left',
        pattern: 'straight',
        directions: counts('0', '0'),
        soakMin: 45,
        temperatureC: 20.5,
        recordedAt: '2026-03-17T09:20:00.000Z',
      }),
    ],
    staticTests: [sampleTest()],
    handOver: buildHandOver({ byName: 'Tess Holm', at: '2026-03-19T09:00:00.000Z' }),
    ...changes,
  })
}

/** Very long names, many corrections, an overdue gauge, a second revision: several pages. */
export function longRecord(): CertificateRecord {
  const base = ordinaryEvidence()
  const names = [
    'Tess Holm',
    'Jürgen Øster-Łącki',
    'Maria-Magdalena van der Zuiderzee-Oosterschelde',
  ]
  const replaced = Array.from({ length: 14 }, (_, index) =>
    reading({
      id: 100 + index,
      componentId: index % 2 === 0 ? 11 : 12,
      faceKind: index % 2 === 0 ? 'rotating-face' : 'stationary-seat',
      condition: index % 3 === 0 ? 'as-found' : 'as-left',
      pattern: index % 2 === 0 ? 'saddle' : 'rings',
      ringCentre: index % 2 === 0 ? null : 'low',
      directions: counts('2.75', '0.5'),
      recordedById: 1 + (index % 3),
      recordedByName: names[index % 3] ?? 'Tess Holm',
      recordedAt: `2026-03-${String(14 + (index % 4)).padStart(2, '0')}T10:${10 + index}:00.000Z`,
      replacesId: index === 0 ? null : 98 + index < 100 ? null : 98 + index,
      replacedById: index < 12 ? 102 + index : null,
      reason:
        index < 2
          ? ''
          : 'Counted along the wrong diameter: the flat was turned between the two readings, and the second count belonged to the other face, as the note on the tag shows.',
      note: index === 13 ? 'Bands faint near the bore; '.repeat(20) : '',
    }),
  )
  const overdue = use('pressure-gauge', { number: 'G-07', status: 'overdue', dueOn: '2026-02-28' })
  return certificateRecord(
    sampleInput({
      revision: 2,
      changeReason: 'the drawing revision was misread on receipt',
      acknowledgement:
        'Gauge G-07 is three weeks overdue; compared with G-02 on 18 March, no difference seen.',
      evidence: {
        ...base,
        workOrder: {
          ...base.workOrder,
          customerOrder: 'PO-2026/000000000000000000000000000000000000000000000-REV-B',
          reasonForRemoval:
            'Scheduled overhaul together with the whole of the evaporator line; '.repeat(4),
        },
        customer: {
          ...base.customer,
          name: 'Żółć & Ñandú United Paper, Board and Parchment Mills of the Lower Estuary',
          address: 'Strada Înfrățirii nr. 117, Clădirea Administrației Generale, Etajul 3',
          contact: 'Škoda-Đurić 中村 <accounts & maintenance@paper.example>',
        },
        seal: { ...base.seal, serial: 'ESTUARY-PAPER-MILL-LINE-03-AGITATOR-0000000117-B' },
        flatnessReadings: [...base.flatnessReadings, ...replaced],
        staticTests: [
          sampleTest({ id: 1, section: 'inboard', gauge: overdue }),
          sampleTest({
            id: 2,
            section: 'outboard',
            gauge: overdue,
            endTemperatureC: 18.4,
            recordedByName: names[2] ?? '',
            note: 'Barrier side blanked.',
          }),
          sampleTest({ id: 3, section: 'gland', volumeL: 45, durationS: 125, thermometer: null }),
        ],
        handOver: buildHandOver({
          byName: names[2] ?? '',
          at: '2026-03-19T09:00:00.000Z',
          note: 'Both faces re-lapped once more than planned.',
        }),
      },
    }),
  )
}

/** As found unreadable, a seat that still fails, no static test, nothing stated, not invented. */
export function failingRecord(): CertificateRecord {
  return certificateRecord(
    sampleInput({
      evidence: buildEvidence({
        workOrder: buildWorkOrder({ decontamination: 'not-stated', isInvented: false }),
        seal: buildSeal(),
        limitSet: buildLimitSet({ limits: sampleLimits().limits.slice(0, 1) }),
        flatnessReadings: [
          reading({ id: 1, condition: 'as-found', pattern: 'unreadable', directions: [] }),
          reading({
            id: 2,
            condition: 'as-left',
            pattern: 'saddle',
            directions: counts('2', '1.5'),
          }),
        ],
        staticTests: [],
        handOver: null,
      }),
    }),
  )
}

function reading(changes: Parameters<typeof buildFlatnessReading>[0]) {
  return buildFlatnessReading({
    recordedByName: 'Tess Holm',
    lamp: use('lamp', { number: 'L-02', name: 'Helium lamp, bench 2' }),
    flat: use('optical-flat', { number: 'F-03', name: 'Optical flat 150 mm' }),
    ...changes,
  })
}

function counts(first: string, second: string) {
  return [
    { directionDeg: 0, bands: Number(first), bandsTyped: first },
    { directionDeg: 90, bands: Number(second), bandsTyped: second },
  ]
}

function use(kind: InstrumentKind, changes: Partial<InstrumentUse> = {}): InstrumentUse {
  const plain: Readonly<Partial<Record<InstrumentKind, Pick<Instrument, 'name'>>>> = {
    lamp: { name: 'Helium lamp' },
    'optical-flat': { name: 'Optical flat' },
    'pressure-gauge': { name: 'Digital gauge 0 to 400 kPa' },
    thermometer: { name: 'Surface probe' },
  }
  return buildInstrumentUse(kind, {
    ...plain[kind],
    serial: 'S-7711',
    dueOn: '2026-11-30',
    certificateNumber: 'K-2025-311',
    ...changes,
  })
}

function sampleTest(changes: Parameters<typeof buildStaticTest>[0] = {}) {
  return buildStaticTest({
    typed: {
      startPressure: '170',
      endPressure: '166,8',
      pressureUnit: 'kPa',
      pressureReference: 'gauge',
      barometer: '101.325',
    },
    startPressureKPaAbs: 271.325,
    endPressureKPaAbs: 268.125,
    startTemperatureC: 21,
    endTemperatureC: 20.5,
    durationS: 600,
    volumeL: 5,
    stabilisationS: 120,
    startedAt: '2026-03-18T14:00:00.000Z',
    gauge: use('pressure-gauge', { number: 'G-02' }),
    thermometer: use('thermometer', { number: 'T-01' }),
    recordedByName: 'Tess Holm',
    recordedAt: '2026-03-18T14:15:00.000Z',
    ...changes,
  })
}

function sampleSeal() {
  return buildSeal({
    serial: 'SW-0117',
    drawing: 'TS-4471',
    drawingRevision: 'C',
    arrangement: 'single',
    shaftDiameterMm: 50,
    size: '2 in',
    components: [
      buildComponent({
        outerDiameterMm: 61.6,
        innerDiameterMm: 48.9,
        noseHeightMm: 3.1,
        minimumNoseHeightMm: 2.4,
      }),
      buildComponent({ id: 13, kind: 'rotating-secondary', material: 'FKM, 75 IRHD' }),
      buildComponent({ id: 14, kind: 'spring', material: 'Stainless wire, wave spring' }),
      buildComponent({
        id: 12,
        kind: 'stationary-seat',
        material: 'silicon-carbide-sintered',
        outerDiameterMm: 66,
        innerDiameterMm: 47.5,
      }),
      buildComponent({ id: 15, kind: 'stationary-secondary', material: 'FKM, 75 IRHD' }),
    ],
  })
}

function sampleLimits() {
  return buildLimitSet({
    name: 'Liquid seals, general',
    version: 3,
    datedOn: '2026-01-15',
    limits: [
      buildLimit({ basis: 'published', source: 'Installation leaflets of several seal makers' }),
      buildLimit({
        id: 2,
        characteristic: 'static-drop',
        upper: 14,
        asWritten: '0.014 MPa in 5 min, at 0.17 MPa gauge, at most 28 L',
        withinS: 300,
        volumeAtMostL: 28,
        startAtLeastKPaGauge: 170,
        basis: 'published',
        source: 'API 682, air test of the assembly, clause 10.3.4.2 as quoted in print',
      }),
      buildLimit({
        id: 3,
        characteristic: 'static-leak-rate',
        upper: 0.05,
        asWritten: '0.05 Pa·m³/s at 20 °C',
        basis: 'common practice, no source',
        source: 'House practice of the invented workshop',
      }),
    ],
  })
}
