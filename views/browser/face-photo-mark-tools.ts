/**
 * The tools below the picture while bands are marked, and the list of all marks by their order.
 * They set no mark themselves: the script of the marks is asked by the event "face-photo-act".
 */

const form = document.querySelector<HTMLFormElement>('form[data-face-photo]')
const tools = form?.querySelector<HTMLElement>('[data-order-tools]') ?? null
const list = form?.querySelector<HTMLElement>('[data-mark-list]') ?? null
const orderField = form?.querySelector<HTMLInputElement>('[data-order]') ?? null

function act(asked: string | number): void {
  form?.dispatchEvent(new CustomEvent('face-photo-act', { detail: asked }))
}

/** The numbers of the marks of each order, lowest order first. */
function byOrder(): [string, number[]][] {
  const text = form?.querySelector<HTMLTextAreaElement>('[name="points"]')?.value ?? ''
  const groups = new Map<string, number[]>()
  const lines = text.split('\n').filter((line) => line.trim() !== '')
  for (const [index, line] of lines.entries()) {
    const order = line.trim().split(/[\s;]+/)[2] ?? '?'
    groups.set(order, [...(groups.get(order) ?? []), index])
  }
  return [...groups].sort(([a], [b]) => Number(a) - Number(b))
}

function chip(index: number, order: string): HTMLButtonElement {
  const made = document.createElement('button')
  const label = document.querySelector<HTMLElement>('[data-stage]')?.dataset.markLabel ?? ''
  made.type = 'button'
  made.className = 'mark-chip'
  made.dataset.mark = String(index)
  made.textContent = String(index + 1)
  made.setAttribute('aria-label', label.replace('#', String(index + 1)).replace('%', order))
  made.setAttribute('aria-pressed', String(form?.dataset.chosenMark === String(index)))
  return made
}

function draw(): void {
  if (list === null) return
  const focused = list.querySelector<HTMLElement>(':focus')?.dataset.mark
  const rows = byOrder().map(([order, indexes]) => {
    const row = document.createElement('div')
    const name = document.createElement('span')
    row.className = 'mark-row'
    name.className = 'mark-row-order strong'
    name.textContent = (list.dataset.orderLabel ?? '%').replace('%', order)
    row.append(name, ...indexes.map((index) => chip(index, order)))
    return row
  })
  list.replaceChildren(...rows)
  if (focused !== undefined) {
    list.querySelector<HTMLElement>(`[data-mark="${focused}"]`)?.focus()
  }
}

/** The chosen mark comes into sight in its picture, without moving the page. */
function reveal(index: string | undefined): void {
  const scroller = document.querySelector<HTMLElement>('[data-scroller]')
  const label = list?.querySelector(`[data-mark="${index}"]`)?.getAttribute('aria-label')
  const marks = scroller?.querySelectorAll<HTMLElement>('.photo-mark') ?? []
  const mark = [...marks].find((one) => one.getAttribute('aria-label') === label)
  if (scroller === null || mark === undefined) return
  scroller.scrollTo({
    left: mark.offsetLeft - scroller.clientWidth / 2,
    top: mark.offsetTop - scroller.clientHeight / 2,
  })
}

function start(): void {
  if (form === null || tools === null || list === null) return
  tools.hidden = false
  const frame = form.querySelector<HTMLElement>('[data-mark-lists]')
  if (frame) frame.hidden = false
  tools.addEventListener('click', (event) => {
    const pressed = (event.target as Element).closest<HTMLElement>('button')
    if (pressed === null) return
    const { orderStep, markAct } = pressed.dataset
    if (orderStep !== undefined) act(Number(orderStep))
    if (markAct !== undefined) act(markAct)
    draw()
  })
  // The order belongs to the next tap: the server is not asked because of it.
  for (const name of ['input', 'change'] as const) {
    orderField?.addEventListener(name, (event) => event.stopPropagation())
  }
  orderField?.addEventListener('change', () => act('typed'))
  orderField?.addEventListener('keydown', (event) => {
    const step = { ArrowUp: 0.5, ArrowDown: -0.5 }[event.key]
    if (event.key !== 'Enter' && step === undefined) return
    // Enter would record the reading.
    event.preventDefault()
    act(step ?? 'typed')
  })
  list.addEventListener('click', (event) => {
    const pressed = (event.target as Element).closest<HTMLElement>('[data-mark]')
    if (pressed === null) return
    act(`#${pressed.dataset.mark}`)
    reveal(pressed.dataset.mark)
  })
  list.addEventListener('keydown', (event) => {
    if (event.key !== 'Delete' && event.key !== 'Backspace') return
    const { mark } = (event.target as HTMLElement).dataset
    if (mark === undefined) return
    event.preventDefault()
    if (form.dataset.chosenMark !== mark) act(`#${mark}`)
    act('remove')
  })
  for (const name of ['input', 'change', 'face-photo-chosen']) form.addEventListener(name, draw)
  draw()
}

start()

export {}
