/**
 * Two rings over a photograph, drawn from the fields "outer.…" and "inner.…", moved by their middle
 * and by the four ends of their axes: with fingers, a mouse, or the arrow keys.
 */

const form = document.querySelector<HTMLFormElement>('form[data-face-photo]')
const stage = document.querySelector<HTMLElement>('[data-stage]')
const width = Number(stage?.dataset.width)
const height = Number(stage?.dataset.height)

type Edge = 'outer' | 'inner'
type End = 'middle' | 'right' | 'top' | 'left' | 'bottom'
type Ring = { cx: number; cy: number; rx: number; ry: number; rotationDeg: number }

const edges: readonly Edge[] = ['outer', 'inner']
const ends: readonly End[] = ['middle', 'right', 'top', 'left', 'bottom']
/** Along the first and the second half axis. */
const along: Readonly<Record<End, readonly [number, number]>> = {
  middle: [0, 0],
  right: [1, 0],
  top: [0, 1],
  left: [-1, 0],
  bottom: [0, -1],
}
const leastPx = 5
/** How far a sign stands off its edge on the screen, so that no finger hides what it lays. */
const offPx = 30
/** It stays so far within the picture, where a face fills it. */
const rimPx = 18

function field(edge: Edge, part: keyof Ring): HTMLInputElement | null {
  return form?.querySelector<HTMLInputElement>(`[name="${edge}.${part}"]`) ?? null
}

/** As its fields say; where they say nothing, a ring in the middle to be laid onto the face. */
function ringOf(edge: Edge): Ring {
  const number = (part: keyof Ring, otherwise: number) => {
    const text = field(edge, part)?.value.trim().replace(',', '.') ?? ''
    const value = Number(text)
    return text === '' || !Number.isFinite(value) ? otherwise : value
  }
  const radius = Math.min(width, height) * (edge === 'outer' ? 0.4 : 0.3)
  return {
    cx: number('cx', width / 2),
    cy: number('cy', height / 2),
    rx: Math.max(leastPx, number('rx', radius)),
    ry: Math.max(leastPx, number('ry', radius)),
    rotationDeg: number('rotationDeg', 0),
  }
}

function write(edge: Edge, ring: Ring): void {
  for (const part of ['cx', 'cy', 'rx', 'ry', 'rotationDeg'] as const) {
    const input = field(edge, part)
    if (input) input.value = String(Math.round(ring[part] * 100) / 100)
  }
  field(edge, 'cx')?.dispatchEvent(new Event('input', { bubbles: true }))
}

function placeOf(ring: Ring, end: End): { x: number; y: number } {
  const [a, b] = along[end]
  const turn = (ring.rotationDeg * Math.PI) / 180
  const [p, q] = [a * ring.rx, b * ring.ry]
  return {
    x: ring.cx + p * Math.cos(turn) - q * Math.sin(turn),
    y: ring.cy - (p * Math.sin(turn) + q * Math.cos(turn)),
  }
}

/** The opposite end stays where it is, so that a ring is laid on side by side. */
function moved(ring: Ring, end: End, to: { x: number; y: number }): Ring {
  if (end === 'middle') return { ...ring, cx: to.x, cy: to.y }
  const turn = (ring.rotationDeg * Math.PI) / 180
  const [dx, up] = [to.x - ring.cx, ring.cy - to.y]
  const [a, b] = along[end]
  const isFirst = a !== 0
  const sign = a + b
  const reached = isFirst
    ? dx * Math.cos(turn) + up * Math.sin(turn)
    : -dx * Math.sin(turn) + up * Math.cos(turn)
  const old = isFirst ? ring.rx : ring.ry
  const half = Math.max(leastPx, (sign * reached + old) / 2)
  const shift = sign * (half - old)
  const [p, q] = isFirst ? [shift, 0] : [0, shift]
  return {
    ...ring,
    cx: ring.cx + p * Math.cos(turn) - q * Math.sin(turn),
    cy: ring.cy - (p * Math.sin(turn) + q * Math.cos(turn)),
    ...(isFirst ? { rx: half } : { ry: half }),
  }
}

function ellipse(edge: Edge, name: string, ring: Ring): SVGElement {
  const drawn = document.createElementNS('http://www.w3.org/2000/svg', 'ellipse')
  drawn.setAttribute('class', `${name} ${name}-${edge}`)
  for (const part of ['cx', 'cy', 'rx', 'ry'] as const) drawn.setAttribute(part, String(ring[part]))
  drawn.setAttribute('transform', `rotate(${-ring.rotationDeg} ${ring.cx} ${ring.cy})`)
  return drawn
}

const handles = new Map<string, HTMLElement>()

/** Where the sign of an end stands, in pixels of the screen from the corner of the picture. */
function signAt(edge: Edge, end: End, ring: Ring, { x, y }: { x: number; y: number }) {
  const scale = (stage?.clientWidth ?? 0) / width
  const apart = Math.hypot(x - ring.cx, y - ring.cy)
  const outwards = edge === 'outer' ? offPx : -offPx
  const [dx, dy] =
    end === 'middle'
      ? [-outwards, 0]
      : [(outwards * (x - ring.cx)) / apart, (outwards * (y - ring.cy)) / apart]
  const within = (value: number, most: number) => Math.min(most - rimPx, Math.max(rimPx, value))
  return { x: within(x * scale + dx, width * scale), y: within(y * scale + dy, height * scale) }
}

/** The sign beside its end, and a stem from it to the end. */
function place(handle: HTMLElement, sign: { x: number; y: number }, end: { x: number; y: number }) {
  const scale = (stage?.clientWidth ?? 0) / width
  const [dx, dy] = [end.x * scale - sign.x, end.y * scale - sign.y]
  handle.style.left = `${(100 * sign.x) / scale / width}%`
  handle.style.top = `${(100 * sign.y) / scale / height}%`
  const stem = handle.firstElementChild as HTMLElement
  stem.style.width = `${Math.hypot(dx, dy)}px`
  stem.style.rotate = `${Math.atan2(dy, dx)}rad`
}

function draw(): void {
  const isUsed =
    form?.querySelector<HTMLInputElement>('[name="kind"]:checked')?.value !== 'line-grid'
  const rings = edges.map((edge) => [edge, ringOf(edge)] as const)
  const drawn = rings.flatMap(([edge, ring]) => [
    ellipse(edge, 'photo-ring-under', ring),
    ellipse(edge, 'photo-ring', ring),
  ])
  stage?.querySelector('[data-edges]')?.replaceChildren(...(isUsed ? drawn : []))
  for (const [edge, ring] of rings) {
    for (const end of ends) {
      const handle = handles.get(`${edge} ${end}`)
      if (handle === undefined) continue
      handle.hidden = !isUsed
      const at = placeOf(ring, end)
      place(handle, signAt(edge, end, ring, at), at)
    }
  }
}

function pixelsAt(event: PointerEvent): { x: number; y: number } {
  const box = stage?.getBoundingClientRect()
  if (box === undefined) return { x: 0, y: 0 }
  return {
    x: ((event.clientX - box.left) / box.width) * width,
    y: ((event.clientY - box.top) / box.height) * height,
  }
}

function addHandle(edge: Edge, end: End): void {
  const handle = document.createElement('button')
  handle.type = 'button'
  const kind = end === 'middle' ? 'photo-handle-middle' : 'photo-handle-end'
  handle.className = `photo-handle photo-handle-ring photo-handle-${edge} ${kind}`
  const stem = document.createElement('span')
  stem.className = 'photo-stem'
  handle.append(stem)
  const key = `${edge}${end[0]?.toUpperCase()}${end.slice(1)}`
  handle.setAttribute('aria-label', stage?.dataset[key] ?? key)
  let off: { x: number; y: number } | undefined
  handle.addEventListener('pointerdown', (event) => {
    handle.setPointerCapture(event.pointerId)
    const at = pixelsAt(event)
    const place = placeOf(ringOf(edge), end)
    off = { x: place.x - at.x, y: place.y - at.y }
  })
  handle.addEventListener('pointermove', (event) => {
    if (off === undefined) return
    const at = pixelsAt(event)
    write(edge, moved(ringOf(edge), end, { x: at.x + off.x, y: at.y + off.y }))
  })
  for (const over of ['pointerup', 'pointercancel'] as const) {
    handle.addEventListener(over, () => {
      off = undefined
    })
  }
  handle.addEventListener('keydown', (event) => {
    const step = event.shiftKey ? 10 : 1
    const by = { ArrowLeft: [-1, 0], ArrowRight: [1, 0], ArrowUp: [0, -1], ArrowDown: [0, 1] }[
      event.key
    ] as [number, number] | undefined
    if (by === undefined) return
    event.preventDefault()
    const ring = ringOf(edge)
    const { x, y } = placeOf(ring, end)
    write(edge, moved(ring, end, { x: x + step * by[0], y: y + step * by[1] }))
  })
  handles.set(`${edge} ${end}`, handle)
  stage?.querySelector('[data-handles]')?.append(handle)
}

if (form !== null && stage !== null) {
  for (const edge of edges) for (const end of ends) addHandle(edge, end)
  // Where the program found no edges, they are laid before any mark is set.
  const isToBeLaid = field('outer', 'cx')?.value === '' || field('inner', 'cx')?.value === ''
  const box = form.querySelector<HTMLInputElement>('[data-rings-move]')
  if (box) box.checked = isToBeLaid
  // Signs keep their distance on the screen while the picture grows.
  new ResizeObserver(draw).observe(stage)
  form.addEventListener('input', draw)
  form.addEventListener('change', draw)
  draw()
}

export {}
