/**
 * A number as it was entered, with the minus sign of print: for dimensions and service data,
 * which are shown as they were stated and not rounded.
 * @example numberText(-0.5) // −0.5
 */
export function numberText(value: number): string {
  return String(value).replace('-', '−')
}
