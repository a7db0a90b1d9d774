import { describe, expect, it } from 'vitest'
import { formatWithUncertainty } from '../../../src/science/rounding/format-with-uncertainty.ts'
import { seededUniform } from '../seeded-random.ts'

const printed = (value: number, expandedUncertainty: number) => {
  const { valueText, uncertaintyText, power } = formatWithUncertainty({
    value,
    expandedUncertainty,
  })
  return `${valueText} ± ${uncertaintyText}${power === 0 ? '' : ` e${power}`}`
}

describe('formatWithUncertainty', () => {
  it('prints the worked examples of the guide: JCGM 100:2008, 7.2.6 and 7.2.4', () => {
    // 7.2.6: 10.057 62 ohm with 27 milliohm is 10.058 ohm; 28.05 kHz is rounded down to 28 kHz.
    expect(printed(10.05762, 0.027)).toBe('10.058 ± 0.027')
    expect(printed(1000, 28.05)).toBe('1000 ± 28')
    // 7.2.4: (100.021 47 ± 0.000 79) g.
    expect(printed(100.02147, 0.00079)).toBe('100.02147 ± 0.00079')
  })

  it('prints a flatness and a leak rate of the bench', () => {
    expect(printed(0.5875618, 0.0713)).toBe('0.588 ± 0.071')
    expect(printed(0.0229921, 0.001586)).toBe('0.0230 ± 0.0016')
    expect(printed(9.4332e-6, 3.254e-7)).toBe('9.43 ± 0.33 e-6')
  })

  it('takes both to the place that the uncertainty has after its own rounding', () => {
    expect(printed(1.2345, 0.0996)).toBe('1.23 ± 0.10')
    expect(printed(1.2345, 0.0994)).toBe('1.235 ± 0.099')
    expect(printed(9.996, 0.0123)).toBe('9.996 ± 0.012')
    expect(printed(9.9996, 0.012)).toBe('10.000 ± 0.012')
  })

  it('rounds halves away from zero on the digits a person reads', () => {
    expect(printed(1.005, 0.1)).toBe('1.01 ± 0.10')
    expect(printed(-1.005, 0.105)).toBe('-1.01 ± 0.11')
    // 271.325 - 268.1 is 3.22499999999997 in binary.
    expect(printed(271.325 - 268.1, 0.1)).toBe('3.23 ± 0.10')
  })

  it('prints a result smaller than its uncertainty, and one that rounds to zero, plainly', () => {
    expect(printed(0, 0.085)).toBe('0.000 ± 0.085')
    expect(printed(-0.0001, 0.085)).toBe('0.000 ± 0.085')
    expect(printed(0.01, 1.7)).toBe('0.0 ± 1.7')
    expect(printed(0.01, 170)).toBe('0 ± 170')
    expect(printed(3, 1234)).toBe('0 ± 1200')
    expect(printed(1e-9, 2.5e-6)).toBe('0.0 ± 2.5 e-6')
  })

  it('fills up left of the decimal point, and takes a power of ten for what is far from one', () => {
    expect(printed(123456, 2345)).toBe('123500 ± 2300')
    expect(printed(9999999, 12)).toBe('9999999 ± 12')
    expect(printed(99999996, 12)).toBe('9.9999996 ± 0.0000012 e7')
    expect(printed(0.0001, 0.000012)).toBe('0.000100 ± 0.000012')
    expect(printed(0.00009, 0.000012)).toBe('9.0 ± 1.2 e-5')
    expect(printed(-2e-5, 3e-6)).toBe('-2.00 ± 0.30 e-5')
  })

  it('gives an exact result six digits and the uncertainty 0', () => {
    expect(printed(0.58756184, 0)).toBe('0.587562 ± 0')
    expect(printed(0, 0)).toBe('0 ± 0')
    expect(printed(14, 0)).toBe('14.0000 ± 0')
  })

  it('names the decimals that both texts have', () => {
    expect(formatWithUncertainty({ value: 0.5876, expandedUncertainty: 0.071 }).decimals).toBe(3)
    expect(formatWithUncertainty({ value: 1234, expandedUncertainty: 123 }).decimals).toBe(0)
    expect(formatWithUncertainty({ value: 1e-7, expandedUncertainty: 1e-8 }).decimals).toBe(2)
  })

  it('is never off by more than half of its last place, whatever the sizes', () => {
    const uniform = seededUniform(30)
    for (let index = 0; index < 2000; index++) {
      const expandedUncertainty = (uniform() + 0.1) * 10 ** Math.floor(uniform() * 24 - 12)
      const value = (uniform() - 0.5) * expandedUncertainty * 10 ** (uniform() * 5)
      const { valueText, uncertaintyText, power } = formatWithUncertainty({
        value,
        expandedUncertainty,
      })
      const shownUncertainty = Number(`${uncertaintyText}e${power}`)
      const place = 10 ** (Math.floor(Math.log10(shownUncertainty) + 1e-9) - 1)
      // Half a place, and the doubles of the two comparisons.
      expect(Math.abs(Number(`${valueText}e${power}`) - value)).toBeLessThan(place * 0.5001)
      expect(Math.abs(shownUncertainty - expandedUncertainty)).toBeLessThan(place * 0.5001)
    }
  })

  it.each([
    { value: Number.NaN, expandedUncertainty: 1 },
    { value: 1, expandedUncertainty: -1 },
    { value: 1, expandedUncertainty: 1e-101 },
    { value: 1e101, expandedUncertainty: 1 },
    { value: 1, expandedUncertainty: Number.POSITIVE_INFINITY },
  ])('refuses %o', (input) => {
    expect(() => formatWithUncertainty(input)).toThrow(RangeError)
  })
})
