import type { CertifiedCorrection, CertifiedValue } from './certificate.ts'
import { printedRounding } from './certified-judgement.ts'
import type { Evidence } from './evidence.ts'
import { figure, optionalFigure } from './figure.ts'
import type { FlatnessReading } from './flatness.ts'
import type { MeasuredValue } from './measured-value.ts'
import { printedUnit } from './printed-unit.ts'
import type { StaticTest } from './static-test.ts'

/** Every record that took another's place, oldest first. */
export function certifiedCorrections(evidence: Evidence): readonly CertifiedCorrection[] {
  const readings = pairs(evidence.flatnessReadings).map(({ was, became }) => ({
    subject: {
      kind: 'flatness' as const,
      face: became.faceKind,
      condition: became.condition,
    },
    was: flatnessValue(was),
    became: flatnessValue(became),
    ...signed(became),
  }))
  const tests = pairs(evidence.staticTests).map(({ was, became }) => ({
    subject: { kind: 'static-test' as const, section: became.section },
    was: leakValue(was),
    became: leakValue(became),
    ...signed(became),
  }))
  const values = pairs(evidence.measuredValues).map(({ was, became }) => ({
    subject: {
      kind: 'measured-value' as const,
      characteristic: became.characteristic,
      condition: became.condition,
    },
    was: measuredFigure(was),
    became: measuredFigure(became),
    ...signed(became),
  }))
  return [...readings, ...tests, ...values].sort((a, b) => Date.parse(a.at) - Date.parse(b.at))
}

type Replacing = { readonly id: number; readonly replacesId: number | null }

function pairs<T extends Replacing>(records: readonly T[]): readonly { was: T; became: T }[] {
  return records.flatMap((became) => {
    const was = records.find((one) => one.id === became.replacesId)
    return was === undefined ? [] : [{ was, became }]
  })
}

function signed(record: FlatnessReading | StaticTest | MeasuredValue) {
  return { reason: record.reason, byName: record.recordedByName, at: record.recordedAt }
}

function flatnessValue(reading: FlatnessReading): CertifiedValue {
  const value = optionalFigure(reading.flatnessUm, printedRounding.flatness)
  return { figure: value, recordedAt: reading.recordedAt }
}

function measuredFigure(measured: MeasuredValue): CertifiedValue {
  const { storedPerPrinted, rounding } = printedUnit[measured.characteristic]
  const value = figure(measured.valueUm / storedPerPrinted, rounding)
  return { figure: value, recordedAt: measured.recordedAt }
}

function leakValue(test: StaticTest): CertifiedValue {
  const value = figure(test.leakPaM3PerS, printedRounding['static-leak-rate'])
  return { figure: value, recordedAt: test.recordedAt }
}
