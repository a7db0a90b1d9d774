/**
 * Reading a survey with one hand on the shaft. A reading is sent without leaving the page, and kept
 * in the browser until the server has it; each carries a key of its own, so that one that is sent
 * twice is recorded once. Taps, a tapped needle and an indicator on a serial port write into the
 * one field, as a keyboard does. Without this script the form posts by itself.
 */

import { askNextSpot } from './ask-next-spot.ts'
import { indicatorPort } from './indicator-port.ts'
import { readIndicatorLine } from './read-indicator-line.ts'
import { sendReading } from './send-reading.ts'
import { type SurveyStop, showWaiting } from './show-waiting.ts'
import { surveyField } from './survey-field.ts'
import { openSurveyQueue, type WaitingReading } from './survey-queue.ts'
import { takeTaps } from './survey-taps.ts'

const theForm = () => document.querySelector<HTMLFormElement>('form[data-survey]')
const box = () => document.querySelector<HTMLElement>('[data-survey-waiting]')?.dataset
const path = location.pathname
const queue = openSurveyQueue(path, box()?.readerId ?? '')
const tickMs = 5000
/** A server that is there and does not manage is asked less often. */
const ticksOfUnable = 6

let stop: SurveyStop | undefined
/** Spots recorded since the page was drawn: it still takes them for open. */
const recorded = new Set<string>()
let isSending = false
let isSendAsked = false
let tickCount = 0
/** Of readings kept since the page was drawn: makes each key one of its own. */
let sequence = 0
/** What was being typed for a spot when the server drew another one. */
let typedAhead: { readonly spot: string; readonly value: string } | undefined
/** What the port said last; it stays until somebody types, however many lines come after. */
let leftOut = ''
let portTold = ''

/** Key of the spot that the form asks for. */
function asked(): string {
  const names = ['planeIndex', 'turnIndex', 'positionIndex', 'indicator']
  return names.map((name) => surveyField(name)?.value ?? '').join('-')
}

function tell(): void {
  const [told, left] = ['told', 'left-out'].map((name) =>
    document.querySelector(`[data-survey-${name}]`),
  )
  if (told && told.textContent !== portTold) told.textContent = portTold
  if (left && left.textContent !== leftOut) left.textContent = leftOut
}

function show(): void {
  showWaiting(queue, stop)
  tell()
}

function askNext(): void {
  const base = theForm()?.dataset.formKey ?? ''
  const taken = new Set([...recorded, ...queue.list().map((one) => one.spot)])
  askNextSpot(taken, `${base}-${sequence++}`)
}

/** Draws what the server answered; what is being typed for the next spot meanwhile stays. */
function draw(html: string): void {
  const fresh = new DOMParser().parseFromString(html, 'text/html').querySelector('main')
  const main = document.querySelector('main')
  if (!fresh || !main) return
  const typed = surveyField('value')?.value ?? ''
  if (typed !== '') typedAhead = { spot: asked(), value: typed }
  main.replaceWith(document.adoptNode(fresh))
  recorded.clear()
  const value = surveyField('value')
  if (value && value.value === '' && typedAhead?.spot === asked()) {
    value.value = typedAhead.value
    typedAhead = undefined
  }
  begin()
}

/** Asked while a reading is on its way, it looks again after the answer: nothing waits for a tick. */
async function send(): Promise<void> {
  isSendAsked = true
  if (isSending) return
  isSending = true
  try {
    while (isSendAsked) {
      isSendAsked = false
      while (await sendFirst());
    }
  } finally {
    isSending = false
  }
}

/** Sends the first that waits; false where that ends it. */
async function sendFirst(): Promise<boolean> {
  const [first] = queue.list()
  if (first === undefined) return false
  const sent = await sendReading(first, path)
  if (sent.outcome === 'signed-out') {
    // Nothing is lost: it waits under the person's name.
    location.assign(sent.url)
    return false
  }
  if (sent.outcome === 'kept') {
    stop = undefined
    queue.drop(first.formKey)
    recorded.add(first.spot)
    if (queue.list().length === 0) draw(sent.html)
    else show()
    return true
  }
  stop = { formKey: first.formKey, spot: first.spot, sent }
  if (sent.outcome === 'correct') {
    draw(sent.html)
    surveyField('value')?.select()
  }
  show()
  return false
}

function waitingOf(form: HTMLFormElement): WaitingReading {
  const pairs = [...new FormData(form)].map(([name, value]) => [name, String(value)])
  const text = (selector: string) => form.querySelector(selector)?.textContent?.trim() ?? ''
  const where = [text('[data-spot-title]'), text('[data-spot-detail]')]
  return {
    action: form.action,
    body: new URLSearchParams(pairs as string[][]).toString(),
    formKey: surveyField('formKey')?.value ?? '',
    spot: asked(),
    value: surveyField('value')?.value.trim() ?? '',
    where: where.filter((one) => one !== '').join(', '),
    by: box()?.readerName ?? '',
  }
}

function keep(form: HTMLFormElement): void {
  const fresh = waitingOf(form)
  const isCorrected = stop?.sent.outcome === 'correct' && stop.spot === fresh.spot
  queue.add(fresh, isCorrected ? stop?.formKey : undefined)
  if (isCorrected) stop = undefined
  askNext()
  show()
  void send()
}

document.addEventListener('submit', (event) => {
  const form = event.target
  if (!(form instanceof HTMLFormElement) || !form.matches('[data-survey]')) return
  event.preventDefault()
  if ((surveyField('value')?.value ?? '').trim() === '') return
  leftOut = ''
  keep(form)
})

/** What is no plain reading is told with its line and left out: nobody guesses at a figure. */
function take(line: string): void {
  const form = theForm()
  const value = surveyField('value')
  const says = box()
  const read = readIndicatorLine(line, says?.unit ?? '')
  const where = form?.querySelector('[data-spot-title]')?.textContent ?? ''
  const refuse = (why: string | undefined) => {
    leftOut = `${why ?? ''} ${line.trim().slice(0, 40)} (${where})`
    show()
  }
  if (!form || !value || value.disabled) refuse(says?.serialIdle)
  else if (!read.isReading) {
    refuse(read.why === 'other-unit' ? says?.serialUnit : says?.serialBad)
  } else {
    value.value = read.typed
    keep(form)
  }
}

async function listen(): Promise<void> {
  const say = (text: string | undefined) => {
    portTold = text ?? ''
    tell()
  }
  await indicatorPort.listen({
    open: () => {
      say(box()?.serialOn)
      surveyField('value')?.focus()
    },
    line: take,
    close: () => say(box()?.serialEnd),
  })
}

function discard(formKey: string): void {
  queue.drop(formKey)
  const wasCorrected = stop?.formKey === formKey && stop.sent.outcome === 'correct'
  if (stop?.formKey === formKey) stop = undefined
  if (wasCorrected) {
    // The page still says what was wrong with it.
    location.assign(path)
    return
  }
  if (surveyField('value')?.value === '') askNext()
  show()
  void send()
}

document.addEventListener('click', (event) => {
  if (!(event.target instanceof Element)) return
  const discarded = event.target.closest<HTMLElement>('[data-discard]')?.dataset.discard
  if (discarded !== undefined) discard(discarded)
  else if (event.target.closest('[data-waiting-again]')) void send()
  else if (event.target.closest('[data-discard-nameless]')) {
    queue.dropNameless()
    show()
  } else if (event.target.closest('[data-serial]')) void listen()
})

/** What only works with a script is shown by it. */
function begin(): void {
  const form = theForm()
  for (const taps of form?.querySelectorAll<HTMLElement>('[data-graduation]') ?? []) {
    taps.hidden = false
  }
  for (const button of form?.querySelectorAll<HTMLElement>('[data-serial]') ?? []) {
    button.hidden = !indicatorPort.isThere
  }
  surveyField('value')?.focus()
  show()
}

/** A refused reading waits for a person; the rest is tried again by itself. */
function tick(): void {
  tickCount++
  const outcome = stop?.sent.outcome
  if (queue.list().length === 0 || outcome === 'refused' || outcome === 'correct') return
  if (outcome !== 'unable' || tickCount % ticksOfUnable === 0) void send()
}

window.addEventListener('online', () => {
  if (stop === undefined || stop.sent.outcome === 'lost') void send()
})
// Another page of the same survey sent some of them, or has typed more.
window.addEventListener('storage', show)
setInterval(tick, tickMs)
takeTaps()
begin()
// What was typed and waits is not asked for again, unless somebody asks to read it again.
if (location.search === '' && queue.list().some((one) => one.spot === asked())) askNext()
void send()
