import type { CertifiedInstrument } from './certificate.ts'
import { currentOnly } from './current-only.ts'
import type { Evidence } from './evidence.ts'
import type { InstrumentUse } from './instrument.ts'

type Use = { readonly instrument: InstrumentUse; readonly on: string }

/**
 * Every instrument behind a valid result, with what stood on its label on the days of use.
 * One that was recalibrated or went overdue between two uses has a line for each state.
 */
export function certifiedInstruments(evidence: Evidence): readonly CertifiedInstrument[] {
  const lines = new Map<string, CertifiedInstrument>()
  for (const { instrument, on } of uses(evidence)) {
    const { kind, number, name, serial, status, dueOn, certificateNumber } = instrument
    const key = [number, status, dueOn, certificateNumber].join('\n')
    const usedOn = [...new Set([...(lines.get(key)?.usedOn ?? []), on])].sort()
    lines.set(key, { kind, number, name, serial, certificateNumber, dueOn, status, usedOn })
  }
  return [...lines.values()].sort(
    (a, b) => order(a.number, b.number) || order(a.usedOn[0] ?? '', b.usedOn[0] ?? ''),
  )
}

function uses(evidence: Evidence): readonly Use[] {
  return [
    ...currentOnly(evidence.flatnessReadings).flatMap((one) => [
      { instrument: one.lamp, on: one.recordedAt.slice(0, 10) },
      { instrument: one.flat, on: one.recordedAt.slice(0, 10) },
    ]),
    ...currentOnly(evidence.measuredValues).map((one) => ({
      instrument: one.instrument,
      on: one.recordedAt.slice(0, 10),
    })),
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
