import type { Distribution } from '../../../src/science/uncertainty/distributions.ts'
import type { ModelQuantity } from '../../../src/science/uncertainty/measurement-model.ts'

export function quantity(
  name: string,
  value: number,
  standardUncertainty: number,
  distribution: Distribution = 'normal',
  degreesOfFreedom: number | null = null,
): ModelQuantity {
  return { name, value, standardUncertainty, distribution, degreesOfFreedom }
}

/** JCGM 100:2008 H.1, end gauge; inputs as printed, nm and °C; read in two transcriptions. */
export const endGauge = {
  expression: 'lS + d - lS * (dAlpha * theta + alphaS * dTheta)',
  quantities: [
    quantity('lS', 50_000_623, 25, 'normal', 18),
    // Three parts: repeatability 13/sqrt 5 (24), systematic 0.01/0.02 of the comparator (5 and 8).
    quantity('d', 215, 9.681941953967707, 'normal', 25.447250777362726),
    quantity('dAlpha', 0, 1e-6 / Math.sqrt(3), 'rectangular', 50),
    quantity('theta', -0.1, 0.4062, 'u-shaped'),
    quantity('alphaS', 11.5e-6, 2e-6 / Math.sqrt(3), 'rectangular'),
    quantity('dTheta', 0, 0.05 / Math.sqrt(3), 'rectangular', 2),
  ],
}

/** JCGM 101:2008 9.3, calibration of a mass of 100 g, in mg; from memory. */
export const massCalibration = {
  expression: '(mRc + dmRc) * (1 + (rhoA - 1.2) * (1 / rhoW - 1 / rhoR)) - 100000',
  quantities: [
    quantity('mRc', 100_000, 0.05),
    quantity('dmRc', 1.234, 0.02),
    quantity('rhoA', 1.2, 0.1 / Math.sqrt(3), 'rectangular'),
    quantity('rhoW', 8000, 1000 / Math.sqrt(3), 'rectangular'),
    quantity('rhoR', 8000, 50 / Math.sqrt(3), 'rectangular'),
  ],
}

/** JCGM 101:2008 9.4, comparison loss of a power meter. */
export const comparisonLoss = (x1: number) => ({
  expression: 'x1^2 + x2^2',
  quantities: [quantity('x1', x1, 0.005), quantity('x2', 0, 0.005)],
})

/** JCGM 101:2008 9.2.3 and 9.2.4: four rectangular quantities about 0. */
export const sumOfFour = (last: number) => ({
  expression: 'x1 + x2 + x3 + x4',
  quantities: [
    ...['x1', 'x2', 'x3'].map((name) => quantity(name, 0, 1, 'rectangular')),
    quantity('x4', 0, last, 'rectangular'),
  ],
})
