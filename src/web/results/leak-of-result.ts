import type { LeakShown } from '../../../views/results/leak-section.tsx'
import { estimateLeak } from '../../domain/estimate-leak.ts'
import type { Evidence } from '../../domain/evidence.ts'
import type { ShownResult } from '../../domain/shown-result.ts'
import type { AppContext } from '../context.ts'
import { nestFields } from '../read-form.ts'
import { typedText } from '../typed-text.ts'

const names = ['testGas', 'gas', 'pressureKPaGauge', 'testViscosityUPaS', 'viscosityUPaS'] as const

/** A leak in other units and, where the address asks, for another gas or pressure; else null. */
export function leakOfResult(
  c: AppContext,
  evidence: Evidence,
  result: ShownResult,
): LeakShown | null {
  if (result.kind !== 'static-test-leak') return null
  const test = evidence.staticTests.find((one) => one.id === result.id)
  if (test === undefined) return null
  const input = nestFields(new URL(c.req.url).searchParams)
  const typed = Object.fromEntries(names.map((name) => [name, typedText(input[name])]))
  const isAsked = input.gas !== undefined
  const estimated = isAsked ? estimateLeak(typed, test) : null
  return {
    leakPaM3PerS: test.leakPaM3PerS,
    referenceTemperatureC: test.referenceTemperatureC,
    typed: isAsked
      ? typed
      : { ...typed, testGas: 'air', gas: 'air', pressureKPaGauge: gaugeText(test) },
    faults: estimated?.ok === false ? estimated.faults : [],
    estimate: estimated?.ok === true ? (estimated.value ?? 'not-driven') : null,
  }
}

/** What it was tested at, to start from. */
function gaugeText(test: { readonly startPressureKPaAbs: number; readonly barometerKPa: number }) {
  const kPa = test.startPressureKPaAbs - test.barometerKPa
  return kPa > 0 ? String(Math.round(kPa * 10) / 10) : ''
}
