import {
  type Calculation,
  CalculatorFragment,
  CalculatorPage,
} from '../../../views/calculator-page.tsx'
import { convertBands } from '../../domain/band-conversion.ts'
import type { AppContext } from '../context.ts'
import { nestFields } from '../read-form.ts'
import { asksForFragment, frameOf, sendFragment, sendPage } from '../send-page.ts'
import { typedText } from '../typed-text.ts'

export { showConformity } from './conformity.tsx'
export { showUncertainty } from './uncertainty.tsx'

/** Everything stands in the address, so that a calculation can be sent as a link. */
export function showCalculator(c: AppContext): Promise<Response> {
  const input = nestFields(new URL(c.req.url).searchParams)
  const converted = convertBands(input)
  const calculation: Calculation = {
    values: {
      lamp: typedText(input.lamp) || 'helium',
      quantity: typedText(input.quantity) || 'bands',
      value: typedText(input.value),
      viewingAngleDeg: typedText(input.viewingAngleDeg),
    },
    faults: converted.ok ? [] : converted.faults,
    conversion: converted.ok ? converted.value : null,
  }
  // While somebody types, a half number is no refusal: the fragment shows it and is no error.
  if (asksForFragment(c)) {
    return sendFragment(c, <CalculatorFragment calculation={calculation} />)
  }
  const page = <CalculatorPage frame={frameOf(c)} calculation={calculation} />
  return sendPage(c, page, converted.ok ? 200 : 422)
}
