/** A factor that is exact by definition, so its standard uncertainty is zero. */
export interface ExactFactor {
  readonly value: number
  readonly unit: string
  readonly standardUncertainty: 0
  readonly source: string
}

function exact(value: number, unit: string, source: string): ExactFactor {
  return { value, unit, standardUncertainty: 0, source }
}

const yardAndPound = 'International yard and pound agreement, 1959'

/** The defined factors everything else is derived from. */
export const exactFactors = {
  inch: exact(0.0254, 'm', yardAndPound),
  pound: exact(0.453_592_37, 'kg', yardAndPound),
  standardGravity: exact(9.806_65, 'm/s2', '3rd CGPM 1901, declaration'),
  bar: exact(100_000, 'Pa', 'SI Brochure, 8th edition, table 8'),
  atmosphere: exact(101_325, 'Pa', '10th CGPM 1954, resolution 4'),
  torr: exact(101_325 / 760, 'Pa', 'definition: 1/760 of the standard atmosphere'),
  psi: exact(
    (0.453_592_37 * 9.806_65) / (0.0254 * 0.0254),
    'Pa',
    'definition: pound-force on a square inch, from pound, standard gravity and inch',
  ),
  celsiusZero: exact(273.15, 'K', 'SI Brochure, 9th edition, 2.3.1'),
  fahrenheitZero: exact(459.67, 'deg F', 'definition: 0 K is -459.67 deg F'),
  molarGasConstant: exact(
    8.314_462_618_153_24,
    'J/(mol K)',
    '26th CGPM 2018, resolution 1: Boltzmann constant times Avogadro constant, both exact',
  ),
} as const satisfies Record<string, ExactFactor>
