/** Uniform numbers from 0 to 1, the same for the same seed (mulberry32). */
export function seededUniform(seed: number): () => number {
  let state = seed >>> 0
  return () => {
    state = (state + 0x6d2b79f5) >>> 0
    let mixed = Math.imul(state ^ (state >>> 15), 1 | state)
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4294967296
  }
}

/** Standard normal numbers by Box and Muller. */
export function seededNormal(seed: number): () => number {
  const uniform = seededUniform(seed)
  return () => Math.sqrt(-2 * Math.log(1 - uniform())) * Math.cos(2 * Math.PI * uniform())
}

/** Normal numbers of one size in which each resembles the one before by `correlation`. */
export function seededAutoregressive(seed: number, correlation: number): () => number {
  const normal = seededNormal(seed)
  let value = normal()
  return () => {
    value = correlation * value + Math.sqrt(1 - correlation * correlation) * normal()
    return value
  }
}
