import { throughputUnits } from '../science/units/throughput-units.ts'
import { certifiedJudgement, printedRounding } from './certified-judgement.ts'
import type { CertifiedStaticTest } from './certified-results.ts'
import { currentOnly } from './current-only.ts'
import type { Evidence } from './evidence.ts'
import { figure, optionalFigure } from './figure.ts'
import { judgeStaticTest, leakLimitTemperatureC } from './judge-static-test.ts'
import { standingTests } from './standing.ts'
import type { StaticTest } from './static-test.ts'

/** The static tests that no correction replaced, oldest first, beside their limits. */
export function certifiedStaticTests(evidence: Evidence): readonly CertifiedStaticTest[] {
  const standing = standingTests(evidence.staticTests)
  return currentOnly(evidence.staticTests).map((test) => ({
    ...stateOf(test),
    ...judgedLeak(test, evidence),
    section: test.section,
    isNewest: standing.includes(test),
    note: test.note,
    method: test.method,
    gaugeNumber: test.gauge.number,
    thermometerNumber: test.thermometer?.number ?? null,
    recordedByName: test.recordedByName,
    recordedAt: test.recordedAt,
  }))
}

/** What was read, and what stood on the gauge as it was typed. */
function stateOf(test: StaticTest) {
  const pressure = { decimals: 3 }
  const gaugeKPa = test.startPressureKPaAbs - test.barometerKPa
  return {
    startPressureKPaAbs: figure(test.startPressureKPaAbs, pressure),
    endPressureKPaAbs: figure(test.endPressureKPaAbs, pressure),
    startPressureKPaGauge: figure(gaugeKPa, pressure),
    barometerKPa: figure(test.barometerKPa, 'as-entered'),
    startTemperatureC: figure(test.startTemperatureC, 'as-entered'),
    endTemperatureC: figure(test.endTemperatureC, 'as-entered'),
    durationS: figure(test.durationS, 'as-entered'),
    stabilisationS: optionalFigure(test.stabilisationS, 'as-entered'),
    leakPlace: test.leakPlace,
    expandedFromL: optionalFigure(test.expansion?.knownVolumeL ?? null, 'as-entered'),
    volumeL: figure(test.volumeL, test.expansion === null ? 'as-entered' : { digits: 4 }),
    startedAt: test.startedAt,
    typed: test.typed,
  }
}

function judgedLeak(test: StaticTest, evidence: Evidence) {
  const judged = judgeStaticTest(test, evidence)
  const drop = judged.find((one) => one.characteristic === 'static-drop')
  const leak = judged.find((one) => one.characteristic === 'static-leak-rate')
  if (drop === undefined || leak === undefined || leak.value === null) {
    throw new Error('certifiedStaticTests requires a judgement of drop and of leak rate')
  }
  const rounding = printedRounding['static-leak-rate']
  const { leakMlPerMin } = throughputUnits({
    leakPaM3PerS: leak.value,
    referenceTemperatureC: leakLimitTemperatureC,
  })
  return {
    pressureDropKPa: figure(test.pressureDropKPa, printedRounding['static-drop']),
    drop: certifiedJudgement(drop),
    leakPaM3PerS: figure(leak.value, rounding),
    leakMlPerMin: figure(leakMlPerMin, printedRounding.mlPerMin),
    leakTemperatureC: figure(leakLimitTemperatureC, { decimals: 0 }),
    leak: certifiedJudgement(leak),
    uncompensatedPaM3PerS: figure(test.uncompensatedPaM3PerS, rounding),
  }
}
