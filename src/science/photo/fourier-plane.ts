import { requireWhole } from '../check/require-whole.ts'

/** One pass along lines of `size` numbers that lie `stride` apart, in place. */
function transformLine(
  re: Float64Array,
  im: Float64Array,
  line: { readonly start: number; readonly stride: number; readonly size: number },
  tables: {
    readonly cosines: Float64Array
    readonly sines: Float64Array
    readonly swap: Int32Array
  },
): void {
  const { start, stride, size } = line
  const { cosines, sines, swap } = tables
  for (let i = 0; i < size; i++) {
    const j = swap[i] as number
    if (j <= i) continue
    const [a, b] = [start + i * stride, start + j * stride]
    const [hr, hi] = [re[a] as number, im[a] as number]
    re[a] = re[b] as number
    im[a] = im[b] as number
    re[b] = hr
    im[b] = hi
  }
  for (let half = 1; half < size; half *= 2) {
    const jump = size / (2 * half)
    for (let block = 0; block < size; block += 2 * half) {
      for (let k = 0; k < half; k++) {
        const c = cosines[k * jump] as number
        const s = sines[k * jump] as number
        const a = start + (block + k) * stride
        const b = a + half * stride
        const br = re[b] as number
        const bi = im[b] as number
        const tr = br * c + bi * s
        const ti = bi * c - br * s
        const ar = re[a] as number
        const ai = im[a] as number
        re[b] = ar - tr
        im[b] = ai - ti
        re[a] = ar + tr
        im[a] = ai + ti
      }
    }
  }
}

function isEmpty(values: Float64Array, start: number, size: number): boolean {
  for (let i = start; i < start + size; i++) if (values[i] !== 0) return false
  return true
}

const kept = new Map<
  number,
  { readonly cosines: Float64Array; readonly sines: Float64Array; readonly swap: Int32Array }
>()

function tablesOf(size: number) {
  const known = kept.get(size)
  if (known !== undefined) return known
  const bits = Math.log2(size)
  const swap = Int32Array.from({ length: size }, (_, i) => {
    let reversed = 0
    for (let b = 0; b < bits; b++) if ((i >> b) & 1) reversed |= 1 << (bits - 1 - b)
    return reversed
  })
  const angle = (k: number) => (2 * Math.PI * k) / size
  const cosines = Float64Array.from({ length: size / 2 }, (_, k) => Math.cos(angle(k)))
  const sines = Float64Array.from({ length: size / 2 }, (_, k) => Math.sin(angle(k)))
  const tables = { cosines, sines, swap }
  kept.set(size, tables)
  return tables
}

/**
 * Transforms a square of complex numbers, in place.
 *
 * F(u, v) = sum f(x, y) exp(-2 pi i (u x + v y) / size)
 *
 * @param re,im real and imaginary parts, size x size, row by row
 * @param size a power of two, from 2 to 1024
 * @returns re, whose contents are now those of F, as are im's
 * @throws RangeError when size is no power of two, or the lengths disagree
 * Source: J. W. Cooley and J. W. Tukey, Math. Comput. 19, 297 (1965), radix 2 (from memory).
 * @example fourierPlane(new Float64Array([1, 2, 3, 4]), new Float64Array(4), 2)[0] // 10
 */
export function fourierPlane(re: Float64Array, im: Float64Array, size: number): Float64Array {
  requireWhole('fourierPlane', 'size', size, { from: 2, to: 1024 })
  if ((size & (size - 1)) !== 0) {
    throw new RangeError(`fourierPlane requires size as a power of two, got ${size}`)
  }
  const count = size * size
  requireWhole('fourierPlane', 're length', re.length, { from: count, to: count })
  requireWhole('fourierPlane', 'im length', im.length, { from: count, to: count })
  const tables = tablesOf(size)
  for (let y = 0; y < size; y++) {
    // Rows above and below a ring are empty, and stay so.
    if (isEmpty(re, y * size, size) && isEmpty(im, y * size, size)) continue
    transformLine(re, im, { start: y * size, stride: 1, size }, tables)
  }
  for (let x = 0; x < size; x++) {
    transformLine(re, im, { start: x, stride: size, size }, tables)
  }
  return re
}
