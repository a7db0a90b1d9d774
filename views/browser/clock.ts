/**
 * The clock-face sketch shows what the lists beside it say, and takes taps: one says where a
 * finding begins, the next where it ends, clockwise. Which of them comes next follows from the
 * lists and is said in words. The lists hold what is sent, so that everything works without this.
 */

import { clockSketch } from '../../src/plots/clock-sketch.ts'
import { typedPlace } from '../findings/typed-place.ts'
import { drawAnew } from './draw-anew.ts'

type Name = 'fromHour' | 'toHour' | 'radialPlace'
type Says = Readonly<Record<'begin' | 'end' | 'missing' | 'placed' | 'round', string>>

const theClock = () => document.querySelector<HTMLElement>('[data-clock]')
const listOf = (clock: HTMLElement, name: Name) =>
  clock.querySelector<HTMLSelectElement>(`select[name="${name}"]`)
const hourIn = (clock: HTMLElement, name: Name) => listOf(clock, name)?.value ?? ''

function write(clock: HTMLElement, name: Name, hour: string): void {
  const list = listOf(clock, name)
  if (list) list.value = hour
}

/** The nearest hour; none too near the middle, where a finger points everywhere. */
function hourAt(svg: SVGElement, event: MouseEvent): string | undefined {
  const box = svg.getBoundingClientRect()
  const x = event.clientX - box.left - box.width / 2
  const y = box.height / 2 - (event.clientY - box.top)
  if (Math.hypot(x, y) < box.width / 12) return undefined
  const hour = Math.round(((Math.atan2(x, y) * 6) / Math.PI + 12) % 12)
  return String(hour === 0 ? 12 : hour)
}

function tap(clock: HTMLElement, hour: string): void {
  const [from, to] = [hourIn(clock, 'fromHour'), hourIn(clock, 'toHour')]
  const isEnd = from !== '' && to === ''
  write(clock, isEnd ? 'toHour' : 'fromHour', hour)
  // A new place: the old end says nothing of it.
  if (from !== '' && to !== '') write(clock, 'toHour', '')
}

function step(from: string, to: string): keyof Says {
  if (from === '') return to === '' ? 'begin' : 'missing'
  if (to === '') return 'end'
  return from === to ? 'round' : 'placed'
}

/** What is chosen, and what the next tap says. */
function sentence(clock: HTMLElement): string {
  const says = JSON.parse(clock.dataset.says ?? '{}') as Says
  const [from, to] = [hourIn(clock, 'fromHour'), hourIn(clock, 'toHour')]
  return says[step(from, to)].replaceAll('#', from).replaceAll('%', to)
}

function show(): void {
  const clock = theClock()
  const svg = clock?.querySelector('svg')
  if (!clock || !svg) return
  const typed = {
    fromHour: hourIn(clock, 'fromHour'),
    toHour: hourIn(clock, 'toHour'),
    radialPlace: hourIn(clock, 'radialPlace'),
  }
  const sizePx = svg.viewBox.baseVal.width
  drawAnew(svg, clockSketch({ sizePx, hasNumbers: true, ...typedPlace(typed) }))
  const line = clock.querySelector<HTMLElement>('[data-clock-says]')
  if (!line) return
  line.hidden = false
  line.textContent = sentence(clock)
}

document.addEventListener('click', (event) => {
  if (!(event.target instanceof Element)) return
  const clock = event.target.closest<HTMLElement>('[data-clock]')
  const svg = event.target.closest('svg')
  const hour = clock && svg ? hourAt(svg, event) : undefined
  if (!clock || hour === undefined) return
  tap(clock, hour)
  show()
})
document.addEventListener('change', show)
// A browser that goes back puts the lists as they were, and says so only now.
window.addEventListener('pageshow', show)
