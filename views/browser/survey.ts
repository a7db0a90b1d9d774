/**
 * Reading a survey with one hand on the shaft. A reading is sent without leaving the page, and kept
 * in the browser while there is no network; each carries a key of its own, so that one that is sent
 * twice is recorded once. Taps, a tapped needle and an indicator on a serial port write into the
 * one field, as a keyboard does. Without this script the form posts by itself.
 */

type Spot = Readonly<Record<'planeIndex' | 'turnIndex' | 'positionIndex', number>> & {
  readonly indicator: string
  readonly title: string
  readonly detail: string
}
type Waiting = { readonly action: string; readonly body: string }

const queueName = `survey ${location.pathname}`
const spotFields = ['planeIndex', 'turnIndex', 'positionIndex', 'indicator'] as const
const patienceMs = 10_000
let isSending = false
/** Of readings kept since the page was drawn: makes each key one of its own. */
let sequence = 0

const theForm = () => document.querySelector<HTMLFormElement>('form[data-survey]')
const field = (form: HTMLFormElement, name: string) =>
  form.querySelector<HTMLInputElement>(`input[name="${name}"]`)

function readQueue(): Waiting[] {
  return JSON.parse(localStorage.getItem(queueName) ?? '[]') as Waiting[]
}

function writeQueue(queue: readonly Waiting[]): void {
  if (queue.length === 0) localStorage.removeItem(queueName)
  else localStorage.setItem(queueName, JSON.stringify(queue))
}

function tell(text: string): void {
  const told = theForm()?.querySelector('[data-survey-told]')
  if (told) told.textContent = text
}

function tellWaiting(): void {
  const form = theForm()
  const count = readQueue().length
  if (form) tell(count === 0 ? '' : (form.dataset.waiting ?? '').replace('#', String(count)))
}

const spotOf = (form: HTMLFormElement) =>
  spotFields.map((name) => field(form, name)?.value).join(' ')

/** Draws what the server answered; what is being typed for the next spot meanwhile stays. */
function draw(html: string): void {
  const fresh = new DOMParser().parseFromString(html, 'text/html').querySelector('main')
  const main = document.querySelector('main')
  if (!fresh || !main) return
  const before = theForm()
  const [spot, typed] = before ? [spotOf(before), field(before, 'value')?.value ?? ''] : ['', '']
  main.replaceWith(document.adoptNode(fresh))
  const form = theForm()
  const value = form && field(form, 'value')
  if (form && value && typed !== '' && spotOf(form) === spot) value.value = typed
  begin()
}

/** The next spot after the one that the form asks for, while the server can't be asked. */
function goOn(form: HTMLFormElement): void {
  const spots = JSON.parse(form.dataset.spots ?? '[]') as Spot[]
  const at = spots.findIndex((spot) =>
    spotFields.every((name) => String(spot[name]) === field(form, name)?.value),
  )
  const next = spots[at + 1]
  const value = field(form, 'value')
  if (value) value.value = ''
  if (!next) return
  for (const name of spotFields) {
    const input = field(form, name)
    if (input) input.value = String(next[name])
  }
  const key = field(form, 'formKey')
  if (key) key.value = `${key.value.slice(0, 40)}-${at + 1}-${sequence++}`
  const title = form.querySelector('[data-spot-title]')
  const detail = form.querySelector('[data-spot-detail]')
  if (title) title.textContent = next.title
  if (detail) detail.textContent = next.detail
  value?.focus()
}

async function send(): Promise<void> {
  if (isSending) return
  isSending = true
  try {
    for (let [first] = readQueue(); first !== undefined; [first] = readQueue()) {
      const response = await fetch(first.action, {
        method: 'POST',
        headers: { 'content-type': 'application/x-www-form-urlencoded' },
        body: first.body,
        signal: AbortSignal.timeout(patienceMs),
      })
      // Signed out, or the survey has ended: nothing is lost, the person decides.
      if (!response.url.includes('/run-out-surveys/')) {
        location.assign(response.url)
        return
      }
      writeQueue(readQueue().slice(1))
      if (response.status === 422 || readQueue().length === 0) draw(await response.text())
    }
  } catch (error) {
    // No network, or one that swallows what is sent: the reading stays, and is sent again.
    if (!(error instanceof TypeError || error instanceof DOMException)) throw error
    tellWaiting()
  } finally {
    isSending = false
  }
}

document.addEventListener('submit', (event) => {
  const form = event.target
  if (!(form instanceof HTMLFormElement) || !form.matches('[data-survey]')) return
  event.preventDefault()
  if ((field(form, 'value')?.value ?? '').trim() === '') return
  const pairs = [...new FormData(form)].map(([name, value]) => [name, String(value)])
  const body = new URLSearchParams(pairs as string[][]).toString()
  writeQueue([...readQueue(), { action: form.action, body }])
  goOn(form)
  if (readQueue().length > 1) tellWaiting()
  void send()
})

/** As many decimals as the step has: 0.01 keeps two. */
function written(value: number, step: number): string {
  const decimals = String(step).split('.')[1]?.length ?? 0
  return value.toFixed(Math.min(6, decimals))
}

function setValue(value: number, step: number): void {
  const form = theForm()
  const input = form && field(form, 'value')
  if (!input) return
  input.value = written(value, step)
  input.focus()
}

function tapped(button: HTMLElement): void {
  const form = theForm()
  const step = Number(button.closest<HTMLElement>('[data-graduation]')?.dataset.graduation)
  const count = Number(button.dataset.graduations)
  const now = Number((form && field(form, 'value')?.value.replace(',', '.')) || 0)
  setValue(count === 0 || !Number.isFinite(now) ? 0 : now + count * step, step)
}

/** A tap on the face of the indicator: the nearest graduation to either side of 0. */
function tappedGauge(gauge: HTMLElement, event: MouseEvent): void {
  const svg = gauge.querySelector('svg')
  if (!svg) return
  const box = svg.getBoundingClientRect()
  const scale = svg.viewBox.baseVal.width / box.width
  const x = (event.clientX - box.left) * scale - Number(gauge.dataset.centreX)
  const y = Number(gauge.dataset.centreY) - (event.clientY - box.top) * scale
  if (Math.hypot(x, y) < Number(gauge.dataset.dead)) return
  const count = Number(gauge.dataset.count)
  const step = Number(gauge.dataset.stepSize)
  setValue(Math.round((count * Math.atan2(x, y)) / (2 * Math.PI)) * step, step)
}

document.addEventListener('click', (event) => {
  if (!(event.target instanceof Element)) return
  const button = event.target.closest<HTMLElement>('[data-graduations]')
  const gauge = event.target.closest<HTMLElement>('[data-gauge]')
  if (button) tapped(button)
  else if (gauge) tappedGauge(gauge, event)
  else if (event.target.closest('[data-serial]')) void listen()
})

type Port = {
  open: (options: { readonly baudRate: number }) => Promise<void>
  readonly readable: ReadableStream<Uint8Array<ArrayBuffer>> | null
}
type Serial = { requestPort: () => Promise<Port> }
const serial = (navigator as Navigator & { readonly serial?: Serial }).serial

/** Indicators send a line a reading; what has no number in it is told and left out. */
function take(line: string): void {
  const form = theForm()
  const number = /[-+]?\d+(?:[.,]\d+)?/.exec(line)?.[0]
  if (!form || line.trim() === '') return
  if (number === undefined) {
    tell(`${form.dataset.serialBad ?? ''} ${line.slice(0, 40)}`)
    return
  }
  const value = field(form, 'value')
  if (value) value.value = number
  form.requestSubmit()
}

async function listen(): Promise<void> {
  const port = await serial?.requestPort().catch(() => undefined)
  if (port === undefined) return
  await port.open({ baudRate: 9600 })
  tell(theForm()?.dataset.serialOn ?? '')
  const reader = port.readable?.pipeThrough(new TextDecoderStream()).getReader()
  let rest = ''
  for (let part = await reader?.read(); part && !part.done; part = await reader?.read()) {
    const lines = (rest + part.value).split(/\r\n|\r|\n/)
    rest = lines.pop() ?? ''
    for (const line of lines) take(line)
  }
  tell(theForm()?.dataset.serialEnd ?? '')
}

/** What only works with a script is shown by it. */
function begin(): void {
  const form = theForm()
  if (!form) return
  for (const taps of form.querySelectorAll<HTMLElement>('[data-graduation]')) taps.hidden = false
  for (const button of form.querySelectorAll<HTMLElement>('[data-serial]')) {
    button.hidden = serial === undefined
  }
  field(form, 'value')?.focus()
  tellWaiting()
}

window.addEventListener('online', () => void send())
setInterval(() => {
  if (readQueue().length > 0) void send()
}, 5000)
begin()
if (readQueue().length > 0) void send()

export {}
