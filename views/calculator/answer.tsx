import type { FC } from 'hono/jsx'
import type { BandConversion, BandQuantity, BandRow } from '../../src/domain/band-conversion.ts'
import { formatFixed } from '../../src/science/rounding/format-fixed.ts'
import { ResultFigure } from '../components/result-figure.tsx'
import { words } from '../words/en.ts'

const decimalsOf: Readonly<Record<BandQuantity, number>> = { bands: 3, um: 4, uin: 2 }

/** One of the three as it is printed, with its unit. */
export function printed(row: BandRow, quantity: BandQuantity) {
  const value = formatFixed({ value: row[quantity], decimals: decimalsOf[quantity] })
  return { value, unit: words.trade.unit[quantity] }
}

/** What was asked first: heights for bands, bands for a height. */
const shown: Readonly<Record<BandQuantity, readonly [BandQuantity, BandQuantity]>> = {
  bands: ['um', 'uin'],
  um: ['bands', 'uin'],
  uin: ['bands', 'um'],
}

/** The answer, or what it waits for; null where a field is faulty. */
export const CalculatorAnswer: FC<{ conversion: BandConversion | null }> = ({ conversion }) => {
  const w = words.calculator
  const answer = conversion?.answer ?? null
  if (conversion === null || answer === null) {
    return (
      <>
        <p class="result-label">{w.answer}</p>
        <p class="lead">{conversion === null ? w.faulty : w.ask}</p>
      </>
    )
  }
  const { quantity } = conversion
  const [first, second] = shown[quantity]
  const asked = printed(answer, quantity)
  return (
    <ResultFigure
      label={`${asked.value} ${asked.unit} =`}
      {...printed(answer, first)}
      second={printed(answer, second)}
    />
  )
}
