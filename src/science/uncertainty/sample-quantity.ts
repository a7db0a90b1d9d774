import type { ModelQuantity } from './measurement-model.ts'

/**
 * Fills a block with draws of a quantity from what is known about it.
 *
 * normal: polar method; rectangular: half width u sqrt 3; triangular: half width u sqrt 6;
 * u-shaped: arc sine, half width u sqrt 2; t: scaled and shifted by u, so that it scatters by
 * u sqrt(v / (v - 2))
 *
 * @param quantity what is known; a t distribution states its degrees of freedom, else it is normal
 * @param uniform generator of numbers from 0 to below 1
 * @param block is filled to its end
 * Validity: degrees of freedom count for distribution t alone: the others are known as stated.
 * Source: JCGM 101:2008, 6.4.2 to 6.4.9; polar methods of Marsaglia and of Bailey (from memory).
 * @example sampleQuantity({ name: 'x', value: 3, distribution: 'normal', standardUncertainty: 0,
 *   degreesOfFreedom: null }, () => 0.5, new Float64Array(1)) // undefined
 */
export function sampleQuantity(
  quantity: ModelQuantity,
  uniform: () => number,
  block: Float64Array,
): void {
  const { value, distribution, standardUncertainty: u, degreesOfFreedom } = quantity
  if (u === 0) {
    block.fill(value)
    return
  }
  if (distribution === 'normal') fillNormal(value, u, uniform, block)
  else if (distribution === 't') {
    if (degreesOfFreedom === null) fillNormal(value, u, uniform, block)
    else fillT(value, u, degreesOfFreedom, uniform, block)
  } else fillBounded(value, u, distribution, uniform, block)
}

function fillNormal(value: number, u: number, uniform: () => number, block: Float64Array): void {
  for (let i = 0; i < block.length; i += 2) {
    let x: number
    let y: number
    let square: number
    do {
      x = 2 * uniform() - 1
      y = 2 * uniform() - 1
      square = x * x + y * y
    } while (square >= 1 || square === 0)
    const scale = u * Math.sqrt((-2 * Math.log(square)) / square)
    block[i] = value + x * scale
    if (i + 1 < block.length) block[i + 1] = value + y * scale
  }
}

function fillT(
  value: number,
  u: number,
  degreesOfFreedom: number,
  uniform: () => number,
  block: Float64Array,
): void {
  for (let i = 0; i < block.length; i++) {
    let x: number
    let y: number
    let square: number
    do {
      x = 2 * uniform() - 1
      y = 2 * uniform() - 1
      square = x * x + y * y
    } while (square >= 1 || square === 0)
    const spread = degreesOfFreedom * (square ** (-2 / degreesOfFreedom) - 1)
    block[i] = value + u * x * Math.sqrt(spread / square)
  }
}

function fillBounded(
  value: number,
  u: number,
  distribution: 'rectangular' | 'triangular' | 'u-shaped',
  uniform: () => number,
  block: Float64Array,
): void {
  for (let i = 0; i < block.length; i++) {
    if (distribution === 'rectangular') block[i] = value + u * Math.sqrt(3) * (2 * uniform() - 1)
    else if (distribution === 'triangular') {
      block[i] = value + u * Math.sqrt(6) * (uniform() + uniform() - 1)
    } else block[i] = value + u * Math.SQRT2 * Math.sin(2 * Math.PI * uniform())
  }
}
