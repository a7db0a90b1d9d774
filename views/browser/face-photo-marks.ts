/**
 * Marks along the bands of a photograph, each with the order of its band: set by a tap, moved by
 * dragging or by the arrow keys. They stand in the field "points", one a line, and are drawn from
 * it. The one that is chosen stands in the data of the form, where the tools find it; the tools ask
 * by the event "face-photo-act".
 */

const form = document.querySelector<HTMLFormElement>('form[data-face-photo]')
const stage = document.querySelector<HTMLElement>('[data-stage]')
const scroller = document.querySelector<HTMLElement>('[data-scroller]')
const points = form?.querySelector<HTMLTextAreaElement>('[name="points"]') ?? null
const orderField = form?.querySelector<HTMLInputElement>('[data-order]') ?? null
const width = Number(stage?.dataset.width)
const height = Number(stage?.dataset.height)
/** A finger that moved further than this has drawn, not tapped. */
const tapPx = 8
/** Bands lie close: a tap that misses a mark by so much on the screen is the next one. */
const besidePx = 11

type Place = { readonly x: number; readonly y: number }
type Mark = Place & { readonly order: string }

const before: string[] = []
const isMarking = () =>
  form?.querySelector<HTMLInputElement>('[name="kind"]:checked')?.value === 'marked'
const areRingsMoved = () =>
  form?.querySelector<HTMLInputElement>('[data-rings-move]')?.checked === true

/** Lines as they are: one that is no mark stays, for the server says what is wrong with it. */
function lines(): string[] {
  return (points?.value ?? '').split('\n').filter((line) => line.trim() !== '')
}

function markOf(line: string): Mark | undefined {
  const [x, y, order, ...more] = line.trim().split(/[\s;]+/)
  const [atX, atY] = [x, y].map((text) => Number(text?.replace(',', '.')))
  if (atX === undefined || atY === undefined || order === undefined) return undefined
  if (more.length > 0 || !Number.isFinite(atX) || !Number.isFinite(atY)) return undefined
  return { x: atX, y: atY, order }
}

function lineOf({ x, y, order }: Mark): string {
  const short = (value: number, most: number) =>
    Math.round(Math.min(most, Math.max(0, value)) * 10) / 10
  return `${short(x, width)} ${short(y, height)} ${order}`
}

function chosenIndex(): number | undefined {
  const text = form?.dataset.chosenMark
  return text === undefined ? undefined : Number(text)
}

function setChosen(index: number | undefined): void {
  if (form === null) return
  if (index === undefined) delete form.dataset.chosenMark
  else form.dataset.chosenMark = String(index)
  const mark = index === undefined ? undefined : markOf(lines()[index] ?? '')
  if (mark !== undefined && orderField !== null) orderField.value = mark.order
}

function remember(): void {
  if (points?.value !== before.at(-1)) before.push(points?.value ?? '')
}

function keep(list: readonly string[]): void {
  if (points === null) return
  points.value = list.join('\n')
  points.dispatchEvent(new Event('input', { bubbles: true }))
}

function pixelsAt({ clientX, clientY }: { clientX: number; clientY: number }): Place {
  const box = stage?.getBoundingClientRect()
  if (box === undefined) return { x: 0, y: 0 }
  return {
    x: ((clientX - box.left) / box.width) * width,
    y: ((clientY - box.top) / box.height) * height,
  }
}

function add(at: Place): void {
  remember()
  setChosen(undefined)
  keep([...lines(), lineOf({ ...at, order: orderField?.value.trim() || '0' })])
}

function change(index: number, to: Partial<Mark>): void {
  const mark = markOf(lines()[index] ?? '')
  if (mark === undefined) return
  keep(lines().map((line, k) => (k === index ? lineOf({ ...mark, ...to }) : line)))
}

function remove(index: number | undefined): void {
  if (index === undefined) return
  remember()
  setChosen(undefined)
  keep(lines().filter((_, k) => k !== index))
  const next = buttons.get(index) ?? [...buttons.values()].at(-1)
  if (document.activeElement === document.body) next?.focus()
}

function undo(): void {
  const text = before.pop()
  if (text === undefined) return
  setChosen(undefined)
  keep(text.split('\n'))
}

function choose(index: number): void {
  setChosen(chosenIndex() === index ? undefined : index)
  form?.dispatchEvent(new Event('face-photo-chosen'))
  draw()
}

/** The order of the next tap, and of the mark that is chosen. */
function setOrder(order: number): void {
  if (orderField === null || !Number.isFinite(order)) return
  orderField.value = String(order)
  const index = chosenIndex()
  if (index === undefined) return
  remember()
  change(index, { order: String(order) })
}

function button(index: number): HTMLButtonElement {
  const made = document.createElement('button')
  made.type = 'button'
  made.className = 'photo-mark'
  made.append(document.createElement('span'))
  let start: (Place & { off: Place }) | undefined
  let hasMoved = false
  made.addEventListener('pointerdown', (event) => {
    made.setPointerCapture(event.pointerId)
    const [at, mark] = [pixelsAt(event), markOf(lines()[index] ?? '')]
    const off = { x: (mark?.x ?? at.x) - at.x, y: (mark?.y ?? at.y) - at.y }
    start = { x: event.clientX, y: event.clientY, off }
    hasMoved = false
  })
  made.addEventListener('pointermove', (event) => {
    if (start === undefined) return
    const far = Math.hypot(event.clientX - start.x, event.clientY - start.y)
    if (far > tapPx && !hasMoved) remember()
    if (far > tapPx) hasMoved = true
    const at = pixelsAt(event)
    if (hasMoved) change(index, { x: at.x + start.off.x, y: at.y + start.off.y })
  })
  for (const over of ['pointerup', 'pointercancel'] as const) {
    made.addEventListener(over, () => {
      start = undefined
    })
  }
  made.addEventListener('click', (event) => {
    if (hasMoved) return
    const { x, y, width: sidePx } = made.getBoundingClientRect()
    const off = Math.hypot(event.clientX - x - sidePx / 2, event.clientY - y - sidePx / 2)
    // A press of a key comes without a place.
    const isBeside = event.detail > 0 && off > besidePx && !areRingsMoved()
    if (isBeside) add(pixelsAt(event))
    else choose(index)
  })
  made.addEventListener('keydown', (event) => key(event, index))
  return made
}

function key(event: KeyboardEvent, index: number): void {
  const mark = markOf(lines()[index] ?? '')
  const isGone = event.key === 'Delete' || event.key === 'Backspace'
  const by = { ArrowLeft: [-1, 0], ArrowRight: [1, 0], ArrowUp: [0, -1], ArrowDown: [0, 1] }[
    event.key
  ] as [number, number] | undefined
  if (mark === undefined || (by === undefined && !isGone)) return
  event.preventDefault()
  if (by === undefined) {
    remove(index)
    return
  }
  const step = event.shiftKey ? 10 : 1
  remember()
  change(index, { x: mark.x + step * by[0], y: mark.y + step * by[1] })
}

const buttons = new Map<number, HTMLButtonElement>()

function draw(): void {
  const list = isMarking() ? lines().map(markOf) : []
  for (const [index, one] of buttons) {
    if (list[index] !== undefined) continue
    one.remove()
    buttons.delete(index)
  }
  list.forEach((mark, index) => {
    if (mark === undefined) return
    const one = buttons.get(index) ?? button(index)
    if (!buttons.has(index)) stage?.querySelector('[data-handles]')?.append(one)
    buttons.set(index, one)
    one.style.left = `${(100 * mark.x) / width}%`
    one.style.top = `${(100 * mark.y) / height}%`
    ;(one.firstElementChild as HTMLElement).textContent = mark.order
    one.setAttribute('aria-pressed', String(index === chosenIndex()))
    const label = stage?.dataset.markLabel ?? ''
    one.setAttribute('aria-label', label.replace('#', String(index + 1)).replace('%', mark.order))
  })
  const count = form?.querySelector('[data-mark-count]')
  if (count) count.textContent = String(lines().length)
  form?.classList.toggle('is-marking', isMarking())
}

/** What the tools ask for: a step of the order, or one of a few words. */
function act(asked: string | number): void {
  const order = Number(orderField?.value.replace(',', '.') || 0)
  if (typeof asked === 'number') setOrder(order + asked)
  if (asked === 'typed') setOrder(order)
  if (asked === 'next') {
    setChosen(undefined)
    setOrder(order + 1)
    draw()
  }
  if (asked === 'undo') undo()
  if (asked === 'remove') remove(chosenIndex())
  if (asked.toString().startsWith('#')) choose(Number(asked.toString().slice(1)))
  if (asked !== 'add' || scroller === null) return
  const box = scroller.getBoundingClientRect()
  add(pixelsAt({ clientX: box.left + box.width / 2, clientY: box.top + box.height / 2 }))
  buttons.get(lines().length - 1)?.focus()
}

function start(): void {
  if (form === null || stage === null) return
  let down: PointerEvent | undefined
  stage.addEventListener('pointerdown', (event) => {
    down = event
  })
  stage.addEventListener('click', (event) => {
    const isOnSign = (event.target as Element).closest('button') !== null
    const [dx, dy] = [down?.clientX ?? event.clientX, down?.clientY ?? event.clientY]
    const far = Math.hypot(event.clientX - dx, event.clientY - dy)
    if (isMarking() && !areRingsMoved() && !isOnSign && far <= tapPx) add(pixelsAt(event))
  })
  form.addEventListener('face-photo-act', (event) => {
    act((event as CustomEvent<string | number>).detail)
  })
  form.addEventListener('input', draw)
  form.addEventListener('change', draw)
  draw()
}

start()

export {}
