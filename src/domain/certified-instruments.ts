import type { CertifiedInstrument } from './certificate.ts'
import type { CertifiedException } from './certified-decision.ts'
import { currentOnly } from './current-only.ts'
import type { Evidence } from './evidence.ts'
import type { InstrumentUse } from './instrument.ts'
import { instrumentsOfValue } from './instruments-of-value.ts'

type Use = { readonly instrument: InstrumentUse; readonly on: string }

/**
 * Every instrument behind a valid result, with what stood on its label on the days of use, and the
 * exception it was used under. One that was recalibrated or went overdue between two uses has a
 * line for each state, and one for each exception.
 */
export function certifiedInstruments(evidence: Evidence): readonly CertifiedInstrument[] {
  const lines = new Map<string, CertifiedInstrument>()
  for (const { instrument, on } of uses(evidence)) {
    const { kind, number, name, serial, status, dueOn, certificateNumber } = instrument
    const exception = exceptionOf(instrument)
    const key = [number, status, dueOn, certificateNumber, instrument.exception?.id].join('\n')
    const usedOn = [...new Set([...(lines.get(key)?.usedOn ?? []), on])].sort()
    const label = { kind, number, name, serial, certificateNumber, dueOn, status }
    lines.set(key, { ...label, usedOn, exception })
  }
  return [...lines.values()].sort(
    (a, b) => order(a.number, b.number) || order(a.usedOn[0] ?? '', b.usedOn[0] ?? ''),
  )
}

function exceptionOf({ number, exception }: InstrumentUse): CertifiedException | null {
  if (exception === undefined) return null
  const { fault, reason, allowedByName, allowedAt } = exception
  return { instrumentNumber: number, fault, reason, allowedByName, allowedAt }
}

function uses(evidence: Evidence): readonly Use[] {
  return [
    ...currentOnly(evidence.flatnessReadings).flatMap((one) => [
      { instrument: one.lamp, on: one.recordedAt.slice(0, 10) },
      { instrument: one.flat, on: one.recordedAt.slice(0, 10) },
    ]),
    ...currentOnly(evidence.measuredValues).flatMap((one) =>
      instrumentsOfValue(one).map((instrument) => ({
        instrument,
        on: one.recordedAt.slice(0, 10),
      })),
    ),
    ...[...currentOnly(evidence.wearTracks), ...currentOnly(evidence.springChecks)].flatMap(
      ({ instrument, recordedAt }) =>
        instrument === null ? [] : [{ instrument, on: recordedAt.slice(0, 10) }],
    ),
    ...currentOnly(evidence.staticTests).flatMap((one) =>
      [one.gauge, one.thermometer, one.volume]
        .filter((instrument) => instrument !== null)
        .map((instrument) => ({ instrument, on: one.startedAt.slice(0, 10) })),
    ),
  ]
}

/** Not the locale's order: the record must be the same on every machine. */
function order(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0
}
