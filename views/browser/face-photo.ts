/**
 * The workbench of a photograph: asks the server anew whenever a field changes, shows how far the
 * reading is, and lays over the picture what was seen. The fields of the form hold the truth; the
 * other scripts of the page only change them, and say so by the event "input".
 */

const form = document.querySelector<HTMLFormElement>('form[data-face-photo]')
const place = document.querySelector<HTMLElement>('#face-photo-answer')
/** Long enough for the next tap, short enough to feel at once. */
const restMs = 400
/** They change no figure. */
const passive = ['note', 'reason', 'formKey', 'replacesId']

let waiting: ReturnType<typeof setTimeout> | undefined
let running: AbortController | undefined
let asked = ''

/** The file of a form is none here: all of its fields are texts. */
function fields(): [string, string][] {
  return form === null ? [] : [...new FormData(form)].map(([name, one]) => [name, String(one)])
}

/** What decides the answer: a question that came with an answer and is still open asks nothing. */
function question(): string {
  return JSON.stringify(fields().filter(([name, one]) => one !== '' && !passive.includes(name)))
}

/** A field that was left without a change asks nothing new. */
function ask(): void {
  if (question() === asked) return
  clearTimeout(waiting)
  // Its answer would draw the older state over what was just chosen.
  running?.abort()
  place?.setAttribute('aria-busy', 'true')
  waiting = setTimeout(() => void read(), restMs)
}

async function read(): Promise<void> {
  if (form === null) return
  clearTimeout(waiting)
  running?.abort()
  const mine = new AbortController()
  running = mine
  asked = question()
  place?.setAttribute('aria-busy', 'true')
  showProgress(0)
  showLost(false)
  try {
    const answer = await fetch(form.dataset.facePhoto ?? '', {
      method: 'POST',
      body: new URLSearchParams(fields()),
      headers: { accept: 'application/x-ndjson' },
      signal: mine.signal,
    })
    const isAnswer = answer.ok && answer.headers.get('content-type')?.includes('x-ndjson')
    if (!isAnswer || answer.body === null) throw new Error(`status ${answer.status}`)
    if (!(await follow(answer.body))) throw new Error('no answer')
    if (question() === asked) place?.removeAttribute('aria-busy')
  } catch {
    // A newer question ended this one; else whoever looks at old figures is told so.
    if (!mine.signal.aborted) {
      asked = ''
      showLost(true)
    }
  } finally {
    if (running === mine) hideProgress()
  }
}

/** A line of JSON each time: how far, and at last the answer. True when that came. */
async function follow(body: ReadableStream<Uint8Array>): Promise<boolean> {
  const reader = body.getReader()
  const decoder = new TextDecoder()
  let rest = ''
  let isAnswered = false
  for (;;) {
    const { done, value } = await reader.read()
    rest += decoder.decode(value, { stream: !done })
    const lines = rest.split('\n')
    rest = lines.pop() ?? ''
    for (const line of lines) {
      const { progress, html } = JSON.parse(line) as { progress?: number; html?: string }
      if (progress !== undefined) showProgress(progress)
      if (html === undefined) continue
      isAnswered = true
      if (question() === asked) show(html)
    }
    if (done) return isAnswered
  }
}

function show(html: string): void {
  if (place === null) return
  const focused = document.activeElement
  const focusedId = focused !== null && place.contains(focused) ? focused.id : ''
  place.innerHTML = html
  if (focusedId !== '') document.getElementById(focusedId)?.focus()
  layOver()
}

/** Bands, edges and arrows as the server drew them, laid over the picture. */
function layOver(): void {
  const seen = document.querySelector('[data-stage] [data-seen]')
  const drawn = place?.querySelector<HTMLTemplateElement>('[data-overlay]')
  const svg = drawn?.content.querySelector('svg')
  seen?.replaceChildren(...(svg === null || svg === undefined ? [] : [...svg.childNodes]))
}

function progressLine(): HTMLElement | null {
  return document.querySelector<HTMLElement>('[data-progress]')
}

function showProgress(share: number): void {
  const line = progressLine()
  const bar = line?.querySelector('progress')
  if (line) line.hidden = false
  if (bar) bar.value = share
}

function hideProgress(): void {
  const line = progressLine()
  if (line) line.hidden = true
}

function showLost(isLost: boolean): void {
  const line = document.querySelector<HTMLElement>('[data-lost]')
  if (line) line.hidden = !isLost
}

function start(): void {
  if (form === null) return
  form.addEventListener('input', ask)
  form.addEventListener('change', ask)
  document.querySelector('[data-show]')?.addEventListener('click', (event) => {
    event.preventDefault()
    void read()
  })
  // Recording reads the photograph once more: that takes as long as the reading did.
  form.addEventListener('submit', () => {
    running?.abort()
    running = undefined
    clearTimeout(waiting)
    showProgress(0)
    progressLine()?.querySelector('progress')?.removeAttribute('value')
  })
  window.addEventListener('pageshow', (event) => {
    if (event.persisted) hideProgress()
  })
  const hint = document.querySelector<HTMLElement>('[data-stage-hint]')
  if (hint) hint.hidden = false
  // The server may have drawn an answer into the page already.
  asked = question()
  if (place?.querySelector('[data-overlay]') === null) void read()
  else layOver()
}

start()

export {}
