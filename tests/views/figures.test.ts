import { describe, expect, it } from 'vitest'
import { guardText } from '../../views/figures/guard-text.ts'
import { numberText } from '../../views/figures/number-text.ts'
import { resultText, secondResultText } from '../../views/figures/result-text.ts'
import { dayText, minuteText } from '../../views/figures/time-text.ts'

describe('figures on pages', () => {
  it('shows an instant to the minute and names its zone', () => {
    expect(minuteText('2026-11-25T13:45:12.000Z')).toBe('2026-11-25 13:45 UTC')
    expect(dayText('2026-11-25T13:45:12.000Z')).toBe('2026-11-25')
  })

  it('shows flatness in microns and microinches', () => {
    // 3 helium bands: 3 × 587.5618 / 2 nm = 0.8813 µm = 34.7 µin (1 µin = 0.0254 µm).
    expect(resultText('flatness', 0.8813427)).toEqual({ value: '0.881', unit: 'µm' })
    expect(secondResultText('flatness', 0.8813427)).toEqual({ value: '34.7', unit: 'µin' })
  })

  it('shows a leak rate with a power of ten, and in millilitres a minute', () => {
    expect(resultText('static-leak-rate', 0.00000943)).toEqual({
      value: '9.43 × 10⁻⁶',
      unit: 'Pa·m³/s',
    })
    // 101.325 kPa × 1 mL/min = 0.00168875 Pa·m³/s.
    expect(secondResultText('static-leak-rate', 0.00168875)?.value).toBe('1.00')
    expect(secondResultText('static-drop', 1)).toBeUndefined()
  })

  it('shows a limit of acceptance to one place below the digits of its uncertainty', () => {
    // 0.6 - 1.6449 x 0.04; U 0.08 prints as 0.080, so the fourth decimal is the last.
    expect(guardText(0.5342058549, 0.08)).toBe('0.5342')
    expect(guardText(2 - 0.24, 0.24)).toBe('1.76')
    expect(guardText(-12_345.6789, 250)).toBe('−12346')
    expect(guardText(2.12345, 0)).toBe('2.12345')
  })

  it('shows a stated number as stated, with the minus sign of print', () => {
    expect(numberText(-0.5)).toBe('−0.5')
    expect(numberText(88.9)).toBe('88.9')
  })
})
