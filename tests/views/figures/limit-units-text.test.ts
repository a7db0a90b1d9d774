import { expect, test } from 'vitest'
import { conditionsText } from '../../../views/figures/conditions-text.ts'
import { jsonText } from '../../../views/figures/json-text.ts'
import { limitText } from '../../../views/figures/limit-text.ts'
import { limitUnitsText } from '../../../views/figures/limit-units-text.ts'
import { buildLimit } from '../../support/build-limit-set.ts'

const side = { lower: null, upper: null, perMmOf: null } as const

test('shows a limit of flatness in microns, microinches and helium bands', () => {
  // 3 × 587.5618 nm / 2; 1 µin = 0.0254 µm.
  expect(limitUnitsText({ ...side, characteristic: 'flatness', upper: 0.8813427 })).toEqual([
    '≤ 0.881 µm',
    '≤ 34.7 µin',
    '≤ 3.00 helium bands',
  ])
})

test('shows a limit of drop in kPa, bar and psi, and of leak in its three units', () => {
  // 14 kPa / 6.894757 kPa = 2.0305 psi.
  expect(limitUnitsText({ ...side, characteristic: 'static-drop', upper: 14 })).toEqual([
    '≤ 14.00 kPa',
    '≤ 0.140 bar',
    '≤ 2.03 psi',
  ])
  // 101.325 kPa × 1 mL/min = 0.00168875 Pa·m³/s = 0.0168875 mbar·L/s.
  expect(
    limitUnitsText({ ...side, characteristic: 'static-leak-rate', upper: 0.00168875 }),
  ).toEqual(['≤ 0.00169 Pa·m³/s', '≤ 1.00 mL/min at 20 °C', '≤ 0.0169 mbar·L/s'])
})

test('shows run-outs in mm and in inches as pump manuals pair them: 0.05 mm, 0.002 in', () => {
  expect(limitUnitsText({ ...side, characteristic: 'shaft-run-out', upper: 50 })).toEqual([
    '≤ 0.050 mm',
    '≤ 0.0020 in',
    '≤ 50.0 µm TIR',
  ])
})

test('shows both sides of a limit that has both', () => {
  const both = { ...side, lower: 1500, upper: 3200 }
  expect(limitUnitsText({ ...both, characteristic: 'face-height' })[0]).toBe(
    '≥ 1.500 mm, ≤ 3.200 mm',
  )
})

test('shows a limit per millimetre with the size it is of, and never as a plain figure', () => {
  const perMm = {
    ...side,
    upper: 0.5,
    perMmOf: 'bore',
    characteristic: 'chamber-face-squareness',
  } as const
  expect(limitUnitsText(perMm)).toEqual([
    '≤ 0.500 µm per mm of chamber bore',
    '≤ 0.000500 in per in of chamber bore',
  ])
  expect(limitText(perMm)).toBe('≤ 0.500 µm per mm of chamber bore')
  expect(limitText({ ...perMm, perMmOf: null, upper: 60 })).toBe('≤ 0.060 mm')
})

test('says in words what a limit holds for', () => {
  expect(conditionsText(buildLimit())).toBe('every face')
  expect(conditionsText(buildLimit({ characteristic: 'end-play' }))).toBe('every case')
  const carbon = buildLimit({ faceMaterial: 'carbon-graphite', diameterUpToMm: 75 })
  expect(conditionsText(carbon)).toBe('carbon-graphite, face up to 75 mm')
  expect(
    conditionsText(
      buildLimit({
        characteristic: 'end-play',
        diameterOverMm: 25,
        diameterUpToMm: 50,
        pressureOverKPa: 2000,
        service: 'dry-gas',
      }),
    ),
  ).toBe('shaft over 25 up to 50 mm, sealed pressure over 20 bar, dry gas')
  const seat = buildLimit({ componentKind: 'stationary-seat', pressureUpToKPa: 2068.427 })
  expect(conditionsText(seat)).toBe('stationary seat, sealed pressure up to 2068.427 kPa')
})

test('indents JSON and leaves what is none as it is', () => {
  expect(jsonText('{"a":[1]}')).toBe('{\n  "a": [\n    1\n  ]\n}')
  expect(jsonText('not json')).toBe('not json')
})
