import { equivalentGasLeak } from '../science/leak/equivalent-gas-leak.ts'
import { type Input, openFields } from './fields.ts'
import { type LeakGas, leakGases, usualViscosityUPaS } from './leak-gas.ts'
import type { Parsed } from './parsed.ts'
import type { StaticTest } from './static-test.ts'

/** A leak with another gas or under another pressure, and what it was computed with. */
export type EstimatedLeak = {
  readonly testGas: LeakGas
  readonly gas: LeakGas
  readonly testViscosityUPaS: number
  readonly viscosityUPaS: number
  readonly upstreamKPaAbs: number
  readonly downstreamKPaAbs: number
  readonly leakPaM3PerS: number
}

export const estimateLeakBounds = {
  pressureKPaGauge: { min: 0.1, max: 100_000 },
  viscosityUPaS: { min: 1, max: 1000 },
} as const

/** Below it what drove the leak is as unsure as the gauge (common practice, no source). */
const leastDriveKPa = 1

type Tested = Pick<
  StaticTest,
  'leakPaM3PerS' | 'startPressureKPaAbs' | 'endPressureKPaAbs' | 'barometerKPa'
>

/**
 * Reads what a leak is to be told for, and estimates it: from the mean pressure of the hold down to
 * the air around, to another pressure down to the same air. Null where the hold had no pressure above
 * it to drive the leak.
 */
export function estimateLeak(input: Input, test: Tested): Parsed<EstimatedLeak | null> {
  const fields = openFields(input)
  const { pressureKPaGauge, viscosityUPaS: viscosity } = estimateLeakBounds
  const testGas = fields.choice('testGas', leakGases)
  const gas = fields.choice('gas', leakGases)
  const gaugeKPa = fields.decimal('pressureKPaGauge', pressureKPaGauge)
  const testViscosityUPaS =
    fields.optionalDecimal('testViscosityUPaS', viscosity) ?? usualViscosityUPaS[testGas]
  const viscosityUPaS =
    fields.optionalDecimal('viscosityUPaS', viscosity) ?? usualViscosityUPaS[gas]
  if (fields.faults.length > 0) return { ok: false, faults: fields.faults }
  const downstreamKPaAbs = test.barometerKPa
  const heldKPaAbs = (test.startPressureKPaAbs + test.endPressureKPaAbs) / 2
  if (heldKPaAbs < downstreamKPaAbs + leastDriveKPa) return fields.finish(null)
  const upstreamKPaAbs = downstreamKPaAbs + gaugeKPa
  return fields.finish({
    testGas,
    gas,
    testViscosityUPaS,
    viscosityUPaS,
    upstreamKPaAbs,
    downstreamKPaAbs,
    leakPaM3PerS: equivalentGasLeak(
      test.leakPaM3PerS,
      { upstreamKPaAbs: heldKPaAbs, downstreamKPaAbs, viscosityUPaS: testViscosityUPaS },
      { upstreamKPaAbs, downstreamKPaAbs, viscosityUPaS },
    ),
  })
}
