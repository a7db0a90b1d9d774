import { printedRounding } from '../../src/domain/certified-judgement.ts'
import { figure, type Rounding } from '../../src/domain/figure.ts'
import { leakLimitTemperatureC } from '../../src/domain/judge-static-test.ts'
import type { Limit } from '../../src/domain/limit-set.ts'
import { heightToBands } from '../../src/science/optics/height-to-bands.ts'
import { lamps } from '../../src/science/optics/lamps.ts'
import { kPaToPressure } from '../../src/science/units/kpa-to-pressure.ts'
import { throughputUnits } from '../../src/science/units/throughput-units.ts'
import { umToUin } from '../../src/science/units/um-to-uin.ts'
import { limitSetsWords } from '../words/en/limit-sets.ts'
import { tradeWords } from '../words/en/trade.ts'

const { unit } = tradeWords
const { shown } = limitSetsWords

/**
 * A limit in each unit of the trade, the stored one first.
 * @example limitUnitsText({ characteristic: 'flatness', upper: 0.8813427 })[2] // 3.00 helium bands
 */
export function limitUnitsText(limit: Pick<Limit, 'characteristic' | 'upper'>): readonly string[] {
  return values(limit).map(([value, rounding, name]) => `${figure(value, rounding).text} ${name}`)
}

function values({
  characteristic,
  upper,
}: Pick<Limit, 'characteristic' | 'upper'>): readonly (readonly [number, Rounding, string])[] {
  const threeDigits = { digits: 3 }
  if (characteristic === 'flatness') {
    const bands = heightToBands({ heightUm: upper, wavelengthNm: lamps.helium.wavelengthNm })
    return [
      [upper, printedRounding.flatness, unit.um],
      [umToUin(upper), printedRounding.uin, unit.uin],
      [bands, { decimals: 2 }, shown.heliumBands],
    ]
  }
  if (characteristic === 'static-drop') {
    return [
      [upper, printedRounding['static-drop'], unit.kPa],
      [kPaToPressure(upper, 'bar'), threeDigits, shown.bar],
      [kPaToPressure(upper, 'psi'), threeDigits, shown.psi],
    ]
  }
  const leak = { leakPaM3PerS: upper, referenceTemperatureC: leakLimitTemperatureC }
  const { leakMlPerMin, leakMbarLPerS } = throughputUnits(leak)
  return [
    [upper, printedRounding['static-leak-rate'], unit.paM3PerS],
    [leakMlPerMin, printedRounding.mlPerMin, shown.mlPerMin],
    [leakMbarLPerS, threeDigits, shown.mbarLPerS],
  ]
}
