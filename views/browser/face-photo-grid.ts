/**
 * Straight, even lines over a photograph, drawn from the fields of the grid and moved by three
 * handles: shift, direction, spacing.
 */

const form = document.querySelector<HTMLFormElement>('form[data-face-photo]')
const stage = document.querySelector<HTMLElement>('[data-stage]')
const width = Number(stage?.dataset.width)
const height = Number(stage?.dataset.height)

type Grid = { directionDeg: number; spacingPx: number; offsetPx: number }
type Part = 'middle' | 'turn' | 'space'
const parts: readonly Part[] = ['middle', 'turn', 'space']
const names = {
  directionDeg: 'gridDirectionDeg',
  spacingPx: 'gridSpacingPx',
  offsetPx: 'gridOffsetPx',
} as const
const least = 4

const field = (name: string) => form?.querySelector<HTMLInputElement>(`[name="${name}"]`) ?? null
const isUsed = () =>
  form?.querySelector<HTMLInputElement>('[name="kind"]:checked')?.value === 'line-grid'

function grid(): Grid {
  const number = (name: string, otherwise: number) => {
    const text = field(name)?.value.trim().replace(',', '.') ?? ''
    return text === '' || !Number.isFinite(Number(text)) ? otherwise : Number(text)
  }
  return {
    directionDeg: number(names.directionDeg, 0),
    spacingPx: Math.max(least, number(names.spacingPx, Math.min(width, height) / 10)),
    offsetPx: number(names.offsetPx, 0),
  }
}

function write(next: Grid): void {
  for (const part of ['directionDeg', 'spacingPx', 'offsetPx'] as const) {
    const input = field(names[part])
    if (input) input.value = String(Math.round(next[part] * 10) / 10)
  }
  field(names.directionDeg)?.dispatchEvent(new Event('input', { bubbles: true }))
}

/** Along the lines and across them, counted from the middle of the picture; up is positive. */
function placeAt({ directionDeg }: Grid, along: number, across: number) {
  const turn = (directionDeg * Math.PI) / 180
  return {
    x: width / 2 + along * Math.cos(turn) - across * Math.sin(turn),
    y: height / 2 - (along * Math.sin(turn) + across * Math.cos(turn)),
  }
}

const armPx = Math.min(width, height) * 0.35
/** The line that the spacing is pulled by: far enough from the middle for a finger. */
let pulled = 1

function handleAt(now: Grid, part: Part) {
  if (part === 'middle') return placeAt(now, 0, now.offsetPx)
  if (part === 'turn') return placeAt(now, armPx, now.offsetPx)
  return placeAt(now, 0, now.offsetPx + pulled * now.spacingPx)
}

function moved(now: Grid, part: Part, to: { x: number; y: number }): Grid {
  const turn = (now.directionDeg * Math.PI) / 180
  const [dx, up] = [to.x - width / 2, height / 2 - to.y]
  const across = -dx * Math.sin(turn) + up * Math.cos(turn)
  if (part === 'middle') return { ...now, offsetPx: across }
  if (part === 'space')
    return { ...now, spacingPx: Math.max(least, Math.abs(across - now.offsetPx) / pulled) }
  const middle = placeAt(now, 0, now.offsetPx)
  const directionDeg = (Math.atan2(middle.y - to.y, to.x - middle.x) * 180) / Math.PI
  return { ...now, directionDeg }
}

const handles = new Map<Part, HTMLElement>()

function line(now: Grid, across: number, name: string): SVGElement {
  const drawn = document.createElementNS('http://www.w3.org/2000/svg', 'line')
  const far = Math.hypot(width, height)
  const [from, to] = [placeAt(now, -far, across), placeAt(now, far, across)]
  drawn.setAttribute('class', name)
  for (const [key, value] of Object.entries({ x1: from.x, y1: from.y, x2: to.x, y2: to.y })) {
    drawn.setAttribute(key, String(value))
  }
  return drawn
}

let held: Part | undefined

function draw(): void {
  const now = grid()
  // While it is pulled it stays on its line.
  if (held === undefined) pulled = Math.max(1, Math.round((0.7 * armPx) / now.spacingPx))
  const most = Math.ceil(Math.hypot(width, height) / 2 / now.spacingPx)
  const lines = Array.from(
    { length: 2 * most + 1 },
    (_, k) => now.offsetPx + (k - most) * now.spacingPx,
  )
  const drawn = lines.flatMap((across) => [
    line(now, across, 'photo-line-under'),
    line(now, across, 'photo-line'),
  ])
  stage?.querySelector('[data-lines]')?.replaceChildren(...(isUsed() ? drawn : []))
  for (const part of parts) {
    const handle = handles.get(part)
    if (handle === undefined) continue
    const { x, y } = handleAt(now, part)
    handle.hidden = !isUsed()
    handle.style.left = `${(100 * x) / width}%`
    handle.style.top = `${(100 * y) / height}%`
  }
}

function addHandle(part: Part): void {
  const handle = document.createElement('button')
  handle.type = 'button'
  handle.className = `photo-handle ${part === 'middle' ? 'photo-handle-middle' : ''}`
  const key = `grid${part[0]?.toUpperCase()}${part.slice(1)}`
  handle.setAttribute('aria-label', stage?.dataset[key] ?? key)
  handle.addEventListener('pointerdown', (event) => {
    handle.setPointerCapture(event.pointerId)
    held = part
  })
  handle.addEventListener('pointermove', (event) => {
    const box = stage?.getBoundingClientRect()
    if (held !== part || box === undefined) return
    const to = {
      x: ((event.clientX - box.left) / box.width) * width,
      y: ((event.clientY - box.top) / box.height) * height,
    }
    write(moved(grid(), part, to))
  })
  for (const over of ['pointerup', 'pointercancel'] as const) {
    handle.addEventListener(over, () => {
      held = undefined
    })
  }
  handle.addEventListener('keydown', (event) => {
    const sign = { ArrowLeft: -1, ArrowDown: -1, ArrowRight: 1, ArrowUp: 1 }[event.key]
    if (sign === undefined) return
    event.preventDefault()
    const step = sign * (event.shiftKey ? 10 : 1)
    const now = grid()
    if (part === 'middle') write({ ...now, offsetPx: now.offsetPx + step })
    else if (part === 'turn') write({ ...now, directionDeg: now.directionDeg + step / 2 })
    else write({ ...now, spacingPx: Math.max(least, now.spacingPx + step) })
  })
  handles.set(part, handle)
  stage?.querySelector('[data-handles]')?.append(handle)
}

if (form !== null && stage !== null) {
  for (const part of parts) addHandle(part)
  form.addEventListener('input', draw)
  form.addEventListener('change', () => {
    // The first look at the grid needs a grid.
    if (isUsed() && field(names.spacingPx)?.value === '') write(grid())
    draw()
  })
  draw()
}

export {}
