/**
 * The picture larger and smaller: by buttons, by two fingers, by the wheel with Ctrl, by + and -.
 * A mouse drags it along, a finger scrolls it. What stands under the fingers stays there.
 */

const scroller = document.querySelector<HTMLElement>('[data-scroller]')
const stage = document.querySelector<HTMLElement>('[data-stage]')
const least = 1
const most = 8
const stepBy = 1.5
/** A mouse that moved further than this drags the picture and sets no mark. */
const dragPx = 8

let zoom = 1

function zoomTo(to: number, at?: { x: number; y: number }): void {
  if (stage === null || scroller === null) return
  const box = scroller.getBoundingClientRect()
  const x = at === undefined ? scroller.clientWidth / 2 : at.x - box.left
  const y = at === undefined ? scroller.clientHeight / 2 : at.y - box.top
  const across = (scroller.scrollLeft + x) / zoom
  const down = (scroller.scrollTop + y) / zoom
  zoom = Math.min(most, Math.max(least, to))
  stage.style.width = `${100 * zoom}%`
  scroller.scrollLeft = across * zoom - x
  scroller.scrollTop = down * zoom - y
}

function zoomBy(name: string | undefined): void {
  zoomTo(name === 'in' ? zoom * stepBy : name === 'out' ? zoom / stepBy : least)
}

function startButtons(): void {
  const tools = document.querySelector<HTMLElement>('[data-zoom-tools]')
  if (tools === null) return
  tools.hidden = false
  tools.addEventListener('click', (event) => {
    const button = (event.target as Element).closest<HTMLElement>('[data-zoom]')
    if (button !== null) zoomBy(button.dataset.zoom)
  })
}

function startKeysAndWheel(on: HTMLElement): void {
  on.addEventListener('keydown', (event) => {
    const name = { '+': 'in', '-': 'out', '0': 'all' }[event.key]
    if (name === undefined || event.target !== on) return
    event.preventDefault()
    zoomBy(name)
  })
  on.addEventListener(
    'wheel',
    (event) => {
      if (!event.ctrlKey && !event.metaKey) return
      event.preventDefault()
      zoomTo(zoom * Math.exp(-event.deltaY / 300), { x: event.clientX, y: event.clientY })
    },
    { passive: false },
  )
}

function startPinch(on: HTMLElement): void {
  let apart = 0
  let before = 1
  const both = ({ touches }: TouchEvent) => {
    const [a, b] = [touches[0], touches[1]]
    if (a === undefined || b === undefined) return undefined
    return {
      apart: Math.hypot(a.clientX - b.clientX, a.clientY - b.clientY),
      x: (a.clientX + b.clientX) / 2,
      y: (a.clientY + b.clientY) / 2,
    }
  }
  on.addEventListener('touchstart', (event) => {
    apart = both(event)?.apart ?? 0
    before = zoom
  })
  on.addEventListener(
    'touchmove',
    (event) => {
      const now = both(event)
      if (now === undefined || apart === 0) return
      event.preventDefault()
      zoomTo((before * now.apart) / apart, now)
    },
    { passive: false },
  )
}

function startDrag(on: HTMLElement): void {
  let from: { x: number; y: number; left: number; top: number } | undefined
  on.addEventListener('pointerdown', (event) => {
    const isOnSign = (event.target as Element).closest('button') !== null
    if (event.pointerType !== 'mouse' || event.button !== 0 || isOnSign) return
    from = { x: event.clientX, y: event.clientY, left: on.scrollLeft, top: on.scrollTop }
  })
  window.addEventListener('pointermove', (event) => {
    if (from === undefined) return
    const [dx, dy] = [event.clientX - from.x, event.clientY - from.y]
    if (Math.hypot(dx, dy) <= dragPx) return
    on.scrollLeft = from.left - dx
    on.scrollTop = from.top - dy
  })
  for (const over of ['pointerup', 'pointercancel'] as const) {
    window.addEventListener(over, () => {
      from = undefined
    })
  }
}

if (scroller !== null) {
  startButtons()
  startKeysAndWheel(scroller)
  startPinch(scroller)
  startDrag(scroller)
}

export {}
