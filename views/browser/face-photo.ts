/**
 * The workbench of a photograph: asks the server anew whenever a field changes, shows how far the
 * reading is, lays over the picture what was seen, and makes the picture larger and smaller. The
 * fields of the form hold the truth; the other scripts of the page only change them.
 */

const form = document.querySelector<HTMLFormElement>('form[data-face-photo]')
const stage = document.querySelector<HTMLElement>('[data-stage]')
/** Long enough for the next tap, short enough to feel at once. */
const restMs = 400
const passive = ['note', 'reason', 'formKey']

let waiting: ReturnType<typeof setTimeout> | undefined
let running: AbortController | undefined

function ask(): void {
  clearTimeout(waiting)
  waiting = setTimeout(() => void read(), restMs)
}

async function read(): Promise<void> {
  if (form === null) return
  running?.abort()
  const mine = new AbortController()
  running = mine
  showProgress(0)
  try {
    const answer = await fetch(form.dataset.facePhoto ?? '', {
      method: 'POST',
      // The file of a form is none here: all of its fields are texts.
      body: new URLSearchParams([...new FormData(form)].map(([name, one]) => [name, String(one)])),
      headers: { accept: 'application/x-ndjson' },
      signal: mine.signal,
    })
    if (answer.ok && answer.body !== null) await follow(answer.body)
  } catch (error) {
    if (!mine.signal.aborted) throw error
  } finally {
    if (running === mine) hideProgress()
  }
}

/** A line of JSON each time: how far, and at last the answer. */
async function follow(body: ReadableStream<Uint8Array>): Promise<void> {
  const reader = body.getReader()
  const decoder = new TextDecoder()
  let rest = ''
  for (;;) {
    const { done, value } = await reader.read()
    rest += decoder.decode(value, { stream: !done })
    const lines = rest.split('\n')
    rest = lines.pop() ?? ''
    for (const line of lines) take(JSON.parse(line) as { progress?: number; html?: string })
    if (done) return
  }
}

function take({ progress, html }: { progress?: number; html?: string }): void {
  if (progress !== undefined) showProgress(progress)
  const place = document.querySelector('#face-photo-answer')
  if (html === undefined || place === null) return
  const focused = document.activeElement
  const focusedId = focused !== null && place.contains(focused) ? focused.id : ''
  place.innerHTML = html
  if (focusedId !== '') document.getElementById(focusedId)?.focus()
  layOver()
}

/** Bands, edges and arrows as the server drew them, laid over the picture. */
function layOver(): void {
  const seen = stage?.querySelector('[data-seen]')
  const drawn = document.querySelector<HTMLTemplateElement>('#face-photo-answer [data-overlay]')
  const svg = drawn?.content.querySelector('svg')
  seen?.replaceChildren(...(svg === null || svg === undefined ? [] : [...svg.childNodes]))
}

function showProgress(share: number): void {
  const line = document.querySelector<HTMLElement>('[data-progress]')
  const bar = line?.querySelector('progress')
  if (line) line.hidden = false
  if (bar) bar.value = share
}

function hideProgress(): void {
  const line = document.querySelector<HTMLElement>('[data-progress]')
  if (line) line.hidden = true
}

let zoom = 1
function setZoom(to: number): void {
  const scroller = document.querySelector<HTMLElement>('[data-scroller]')
  if (stage === null || scroller === null) return
  const next = Math.min(8, Math.max(1, to))
  // What stands in the middle stays there.
  const across = (scroller.scrollLeft + scroller.clientWidth / 2) / zoom
  const down = (scroller.scrollTop + scroller.clientHeight / 2) / zoom
  zoom = next
  stage.style.width = `${100 * zoom}%`
  scroller.scrollLeft = across * zoom - scroller.clientWidth / 2
  scroller.scrollTop = down * zoom - scroller.clientHeight / 2
}

function start(): void {
  if (form === null) return
  form.addEventListener('input', (event) => {
    if (!passive.includes((event.target as HTMLInputElement).name)) ask()
  })
  form.addEventListener('change', (event) => {
    if (!passive.includes((event.target as HTMLInputElement).name)) ask()
  })
  const tools = document.querySelector<HTMLElement>('[data-zoom-tools]')
  if (tools) tools.hidden = false
  tools?.addEventListener('click', (event) => {
    const button = (event.target as Element).closest<HTMLElement>('[data-zoom]')
    if (button === null) return
    const { zoom: how } = button.dataset
    setZoom(how === 'in' ? zoom * 1.5 : how === 'out' ? zoom / 1.5 : 1)
  })
  document.querySelector('[data-show]')?.addEventListener('click', (event) => {
    event.preventDefault()
    void read()
  })
  // The server may have drawn an answer into the page already.
  if (document.querySelector('#face-photo-answer [data-overlay]') === null) void read()
  else layOver()
}

start()

export {}
