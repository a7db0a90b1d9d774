import { surveyField } from './survey-field.ts'

/** Taps on the buttons of graduations and on the face of the indicator write into the field. */
export function takeTaps(): void {
  document.addEventListener('click', (event) => {
    if (!(event.target instanceof Element)) return
    const button = event.target.closest<HTMLElement>('[data-graduations]')
    const gauge = event.target.closest<HTMLElement>('[data-gauge]')
    if (button) tapped(button)
    else if (gauge) tappedGauge(gauge, event)
  })
}

/** As many decimals as the step has: 0.01 keeps two. */
function written(value: number, step: number): string {
  const decimals = String(step).split('.')[1]?.length ?? 0
  return value.toFixed(Math.min(6, decimals))
}

function setValue(value: number, step: number): void {
  const input = surveyField('value')
  if (!input || input.disabled) return
  input.value = written(value, step)
  input.focus()
}

function tapped(button: HTMLElement): void {
  const step = Number(button.closest<HTMLElement>('[data-graduation]')?.dataset.graduation)
  const count = Number(button.dataset.graduations)
  const now = Number(surveyField('value')?.value.replace(',', '.') || 0)
  setValue(count === 0 || !Number.isFinite(now) ? 0 : now + count * step, step)
}

/** A tap on the face of the indicator: the nearest graduation to either side of 0. */
function tappedGauge(gauge: HTMLElement, event: MouseEvent): void {
  const svg = gauge.querySelector('svg')
  if (!svg) return
  const box = svg.getBoundingClientRect()
  const scale = svg.viewBox.baseVal.width / box.width
  const x = (event.clientX - box.left) * scale - Number(gauge.dataset.centreX)
  const y = Number(gauge.dataset.centreY) - (event.clientY - box.top) * scale
  if (Math.hypot(x, y) < Number(gauge.dataset.dead)) return
  const count = Number(gauge.dataset.count)
  const step = Number(gauge.dataset.stepSize)
  setValue(Math.round((count * Math.atan2(x, y)) / (2 * Math.PI)) * step, step)
}
