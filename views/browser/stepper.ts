/**
 * Gives the band stepper its buttons and arrow keys. Delegates on the document, so it also
 * serves steppers that arrive later. The count stays text: quarters are added as whole numbers
 * of hundredths, so 0.1 + 0.25 is 0.35 and not something near it.
 */

const plainNumber = /^(\d{1,4})(?:[.,](\d{1,2}))?$/

/** Hundredths of a band in a typed count; an empty field counts from nought. */
function hundredths(typed: string): number | undefined {
  const text = typed.trim()
  if (text === '') return 0
  const match = plainNumber.exec(text)
  if (!match) return undefined
  return Number(match[1]) * 100 + Number((match[2] ?? '').padEnd(2, '0'))
}

/** The count as text, with the decimal sign that its writer used. */
function written(count: number, sign: string): string {
  const digits = String(count % 100).padStart(2, '0')
  return `${Math.floor(count / 100)}${sign}${digits}`
}

function step(input: HTMLInputElement, stepHundredths: number): void {
  const count = hundredths(input.value)
  // What we cannot read we leave alone: the server says in a sentence what is wrong with it.
  if (count === undefined) return
  const sign = input.value.includes(',') ? ',' : '.'
  input.value = written(Math.max(0, count + stepHundredths), sign)
  input.dispatchEvent(new Event('input', { bubbles: true }))
  input.dispatchEvent(new Event('change', { bubbles: true }))
}

document.addEventListener('click', (event) => {
  if (!(event.target instanceof Element)) return
  const button = event.target.closest<HTMLElement>('[data-stepper] [data-step]')
  const input = button
    ?.closest('[data-stepper]')
    ?.querySelector<HTMLInputElement>('[data-stepper-input]')
  if (button && input) step(input, Math.round(Number(button.dataset.step) * 100))
})

document.addEventListener('keydown', (event) => {
  const { target } = event
  if (!(target instanceof HTMLInputElement) || !target.matches('[data-stepper-input]')) return
  if (event.altKey || event.ctrlKey || event.metaKey) return
  const size = event.shiftKey ? 100 : 25
  if (event.key === 'ArrowUp') step(target, size)
  else if (event.key === 'ArrowDown') step(target, -size)
  else return
  event.preventDefault()
})

export {}
