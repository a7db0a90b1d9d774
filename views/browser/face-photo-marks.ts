/**
 * Marks along the bands of a photograph, each with the order of its band: set by a tap, moved by
 * dragging or by the arrow keys. They stand in the field "points", one a line, and are drawn from it.
 */

const form = document.querySelector<HTMLFormElement>('form[data-face-photo]')
const stage = document.querySelector<HTMLElement>('[data-stage]')
const scroller = document.querySelector<HTMLElement>('[data-scroller]')
const lines = form?.querySelector<HTMLTextAreaElement>('[name="points"]') ?? null
const orderField = form?.querySelector<HTMLInputElement>('[data-order]') ?? null
const width = Number(stage?.dataset.width)
const height = Number(stage?.dataset.height)
/** A finger that moved further than this has drawn, not tapped. */
const tapPx = 8

type Mark = { readonly x: number; readonly y: number; readonly order: string }
let chosen: number | undefined

const isMarking = () =>
  form?.querySelector<HTMLInputElement>('[name="kind"]:checked')?.value === 'marked'

function marks(): Mark[] {
  return (lines?.value ?? '')
    .split('\n')
    .map((line) => line.trim().split(/[\s;]+/))
    .filter((parts) => parts.length >= 3)
    .map(([x, y, order]) => ({ x: Number(x), y: Number(y), order: order ?? '' }))
    .filter(({ x, y }) => Number.isFinite(x) && Number.isFinite(y))
}

function keep(list: readonly Mark[]): void {
  if (lines === null) return
  const short = (value: number, most: number) =>
    Math.round(Math.min(most, Math.max(0, value)) * 10) / 10
  lines.value = list
    .map(({ x, y, order }) => `${short(x, width)} ${short(y, height)} ${order}`)
    .join('\n')
  lines.dispatchEvent(new Event('input', { bubbles: true }))
}

function pixelsAt({ clientX, clientY }: { clientX: number; clientY: number }) {
  const box = stage?.getBoundingClientRect()
  if (box === undefined) return { x: 0, y: 0 }
  return {
    x: ((clientX - box.left) / box.width) * width,
    y: ((clientY - box.top) / box.height) * height,
  }
}

function add(at: { x: number; y: number }): void {
  chosen = undefined
  keep([...marks(), { ...at, order: orderField?.value.trim() || '0' }])
}

function move(index: number, to: { x: number; y: number }): void {
  keep(marks().map((one, k) => (k === index ? { ...one, ...to } : one)))
}

function remove(index: number | undefined): void {
  if (index === undefined) return
  chosen = undefined
  keep(marks().filter((_, k) => k !== index))
}

function choose(index: number): void {
  chosen = chosen === index ? undefined : index
  const mark = chosen === undefined ? undefined : marks()[chosen]
  if (mark !== undefined && orderField !== null) orderField.value = mark.order
  draw()
}

/** The order of the next tap, and of the mark that is chosen. */
function setOrder(order: number): void {
  if (orderField === null) return
  orderField.value = String(order)
  if (chosen !== undefined) {
    keep(marks().map((one, k) => (k === chosen ? { ...one, order: String(order) } : one)))
  }
}

function button(index: number): HTMLButtonElement {
  const made = document.createElement('button')
  made.type = 'button'
  made.className = 'photo-mark'
  made.append(document.createElement('span'))
  let start: { x: number; y: number } | undefined
  let hasMoved = false
  made.addEventListener('pointerdown', (event) => {
    made.setPointerCapture(event.pointerId)
    start = { x: event.clientX, y: event.clientY }
    hasMoved = false
  })
  made.addEventListener('pointermove', (event) => {
    if (start === undefined) return
    const far = Math.hypot(event.clientX - start.x, event.clientY - start.y)
    if (far > tapPx) hasMoved = true
    if (hasMoved) move(index, pixelsAt(event))
  })
  made.addEventListener('pointerup', () => {
    start = undefined
  })
  made.addEventListener('click', () => {
    if (!hasMoved) choose(index)
  })
  made.addEventListener('keydown', (event) => {
    const mark = marks()[index]
    if (mark === undefined) return
    if (event.key === 'Delete' || event.key === 'Backspace') {
      event.preventDefault()
      remove(index)
      return
    }
    const step = event.shiftKey ? 10 : 1
    const by = { ArrowLeft: [-1, 0], ArrowRight: [1, 0], ArrowUp: [0, -1], ArrowDown: [0, 1] }[
      event.key
    ] as [number, number] | undefined
    if (by === undefined) return
    event.preventDefault()
    move(index, { x: mark.x + step * by[0], y: mark.y + step * by[1] })
  })
  return made
}

const buttons: HTMLButtonElement[] = []

function draw(): void {
  const list = isMarking() ? marks() : []
  const place = stage?.querySelector('[data-handles]')
  while (buttons.length < list.length) {
    const made = button(buttons.length)
    buttons.push(made)
    place?.append(made)
  }
  while (buttons.length > list.length) buttons.pop()?.remove()
  list.forEach(({ x, y, order }, index) => {
    const one = buttons[index] as HTMLButtonElement
    one.style.left = `${(100 * x) / width}%`
    one.style.top = `${(100 * y) / height}%`
    ;(one.firstElementChild as HTMLElement).textContent = order
    one.setAttribute('aria-pressed', String(index === chosen))
    const label = stage?.dataset.markLabel ?? ''
    one.setAttribute('aria-label', label.replace('#', String(index + 1)).replace('%', order))
  })
  const count = form?.querySelector('[data-mark-count]')
  if (count) count.textContent = String(marks().length)
  form?.classList.toggle('is-marking', isMarking())
}

function startMarks(): void {
  if (form === null || stage === null) return
  const tools = form.querySelector<HTMLElement>('[data-order-tools]')
  if (tools) tools.hidden = false
  let down: PointerEvent | undefined
  stage.addEventListener('pointerdown', (event) => {
    down = event
  })
  stage.addEventListener('click', (event) => {
    const isOnSign = (event.target as Element).closest('button') !== null
    const far =
      down === undefined
        ? 0
        : Math.hypot(event.clientX - down.clientX, event.clientY - down.clientY)
    if (isMarking() && !isOnSign && far <= tapPx) add(pixelsAt(event))
  })
  tools?.addEventListener('click', (event) => {
    const pressed = (event.target as Element).closest<HTMLElement>('button')
    if (pressed === null) return
    const step = Number(pressed.dataset.orderStep)
    if (Number.isFinite(step)) setOrder(Number(orderField?.value.replace(',', '.') || 0) + step)
    if ('markUndo' in pressed.dataset) remove(marks().length - 1)
    if ('markClear' in pressed.dataset) remove(chosen)
    if ('markAdd' in pressed.dataset) {
      const box = scroller?.getBoundingClientRect()
      if (box === undefined) return
      add(pixelsAt({ clientX: box.left + box.width / 2, clientY: box.top + box.height / 2 }))
      buttons.at(-1)?.focus()
    }
  })
  // The order belongs to the next tap: the server is not asked because of it.
  orderField?.addEventListener('input', (event) => event.stopPropagation())
  orderField?.addEventListener('change', (event) => {
    event.stopPropagation()
    const order = Number(orderField.value.replace(',', '.'))
    if (Number.isFinite(order)) setOrder(order)
  })
  form.addEventListener('input', draw)
  form.addEventListener('change', draw)
  draw()
}

startMarks()

export {}
