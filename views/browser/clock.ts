/**
 * The clock-face sketch takes taps: the first says where a finding begins, the next where it ends,
 * clockwise. The two lists beside it hold what is sent, so that everything works without this.
 */

let isNextStart = true

function hourAt(svg: SVGSVGElement, event: MouseEvent): string {
  const box = svg.getBoundingClientRect()
  const x = event.clientX - box.left - box.width / 2
  const y = box.height / 2 - (event.clientY - box.top)
  const turn = (Math.atan2(x, y) * 6) / Math.PI
  const hour = Math.round((turn + 12) % 12)
  return String(hour === 0 ? 12 : hour)
}

document.addEventListener('click', (event) => {
  if (!(event.target instanceof Element)) return
  const clock = event.target.closest<HTMLElement>('[data-clock]')
  const svg = event.target.closest('svg')
  if (!clock || !svg) return
  const name = isNextStart ? 'fromHour' : 'toHour'
  const hour = hourAt(svg, event)
  const lists = isNextStart ? ['fromHour', 'toHour'] : [name]
  for (const one of lists) {
    const list = clock.querySelector<HTMLSelectElement>(`select[name="${one}"]`)
    if (list) list.value = hour
  }
  isNextStart = !isNextStart
})

export {}
