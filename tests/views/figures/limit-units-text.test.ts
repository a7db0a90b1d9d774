import { expect, test } from 'vitest'
import { jsonText } from '../../../views/figures/json-text.ts'
import { limitUnitsText } from '../../../views/figures/limit-units-text.ts'

test('shows a limit of flatness in microns, microinches and helium bands', () => {
  // 3 × 587.5618 nm / 2; 1 µin = 0.0254 µm.
  expect(limitUnitsText({ characteristic: 'flatness', upper: 0.8813427 })).toEqual([
    '0.881 µm',
    '34.7 µin',
    '3.00 helium bands',
  ])
})

test('shows a limit of drop in kPa, bar and psi, and of leak in its three units', () => {
  // 14 kPa / 6.894757 kPa = 2.0305 psi.
  expect(limitUnitsText({ characteristic: 'static-drop', upper: 14 })).toEqual([
    '14.00 kPa',
    '0.140 bar',
    '2.03 psi',
  ])
  // 101.325 kPa × 1 mL/min = 0.00168875 Pa·m³/s = 0.0168875 mbar·L/s.
  expect(limitUnitsText({ characteristic: 'static-leak-rate', upper: 0.00168875 })).toEqual([
    '0.00169 Pa·m³/s',
    '1.00 mL/min at 20 °C',
    '0.0169 mbar·L/s',
  ])
})

test('indents JSON and leaves what is none as it is', () => {
  expect(jsonText('{"a":[1]}')).toBe('{\n  "a": [\n    1\n  ]\n}')
  expect(jsonText('not json')).toBe('not json')
})
