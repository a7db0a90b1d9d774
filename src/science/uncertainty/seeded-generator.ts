import { requireWhole } from '../check/require-whole.ts'

/**
 * Gives a generator of uniform numbers that is the same for the same seed.
 *
 * sfc32: three words of 32 bits and a counter, two words for each number of 53 bits
 *
 * @param seed whole, from 0 to 2^32 - 1
 * @returns a function that gives the next number, 0 or more and below 1
 * @throws RangeError outside this range
 * Source: C. Doty-Humphrey, PractRand (from memory); its uniformity is tested here.
 * @example seededGenerator(1)() < 1 // true
 */
export function seededGenerator(seed: number): () => number {
  requireWhole('seededGenerator', 'seed', seed, { from: 0, to: 0xffffffff })
  let a = 0x9e3779b9
  let b = 0x243f6a88
  let c = seed >>> 0
  let counter = 1
  const word = (): number => {
    const next = (((a + b) | 0) + counter) | 0
    counter = (counter + 1) | 0
    a = b ^ (b >>> 9)
    b = (c + (c << 3)) | 0
    c = (c << 21) | (c >>> 11)
    c = (c + next) | 0
    return next >>> 0
  }
  // Neighbouring seeds begin alike; after these the words have nothing in common.
  for (let round = 0; round < 20; round++) word()
  return () => ((word() >>> 5) * 67_108_864 + (word() >>> 6)) / 9_007_199_254_740_992
}
