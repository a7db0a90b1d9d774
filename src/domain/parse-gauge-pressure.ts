import { roundForPrint } from '../science/rounding/round-for-print.ts'
import { gaugeToAbsoluteKPa } from '../science/units/gauge-to-absolute-kpa.ts'
import { kPaToPressure } from '../science/units/kpa-to-pressure.ts'
import { pressureToKPa } from '../science/units/pressure-to-kpa.ts'
import type { Bounds, Fields } from './fields.ts'
import type { Scale } from './parse-gauge-scale.ts'
import { staticTestBounds } from './static-test.ts'
import { tradeWindow } from './trade-window.ts'

/**
 * A pressure as a gauge shows it, in kPa absolute. Without a scale (its fields were faulty) only the
 * number itself is looked at.
 */
export function parseGaugePressure(fields: Fields, name: string, scale: Scale | null): number {
  const before = fields.faults.length
  const value =
    scale === null
      ? fields.decimal(name, { min: -1e9, max: 1e9 })
      : fields.windowed(
          name,
          typedBounds(scale, usualKPaAbs(scale)),
          typedBounds(scale, possibleKPaAbs),
        )
  if (scale === null || fields.faults.length > before) return 0
  const { unit, reference, barometerKPa } = scale
  const pressureKPa = pressureToKPa(value, unit)
  if (reference === 'absolute') return pressureKPa
  // A full vacuum typed with the rounding of its unit must not come out below nothing.
  return gaugeToAbsoluteKPa({ gaugeKPa: Math.max(pressureKPa, -barometerKPa), barometerKPa })
}

const possibleKPaAbs = staticTestBounds.pressureKPaAbs

/** From a full vacuum to the highest sealed pressure of the trade's window, which is a gauge's. */
function usualKPaAbs({ barometerKPa }: Scale): Bounds {
  return { min: 0, max: tradeWindow.sealedPressureKPa.max + barometerKPa }
}

/** Absolute pressures, told in the unit and reference of the field. */
function typedBounds({ unit, reference, barometerKPa }: Scale, { min, max }: Bounds): Bounds {
  const offsetKPa = reference === 'gauge' ? barometerKPa : 0
  const inUnit = (kPa: number) =>
    roundForPrint({ value: kPaToPressure(kPa - offsetKPa, unit), decimals: 4 })
  return { min: inUnit(min), max: inUnit(max) }
}
