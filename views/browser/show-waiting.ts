import type { SentReading } from './send-reading.ts'
import type { SurveyQueue, WaitingReading } from './survey-queue.ts'

/** Why sending stopped, and at which reading. */
export type SurveyStop = {
  readonly formKey: string
  readonly spot: string
  readonly sent: Exclude<SentReading, { outcome: 'kept' | 'signed-out' }>
}

type Says = Readonly<
  Record<
    'lost' | 'unable' | 'refused' | 'correct' | 'status' | 'discard' | 'ofOthers' | 'nameless',
    string
  >
>

/** Says beside the form what waits, why, and of whom; what was refused may be discarded. */
export function showWaiting(queue: SurveyQueue, stop: SurveyStop | undefined): void {
  const box = document.querySelector<HTMLElement>('[data-survey-waiting]')
  if (!box) return
  const says = JSON.parse(box.dataset.says ?? '{}') as Says
  const waiting = queue.list()
  const sentence = ownSentence(says, waiting.length, stop)
  const isHeld = stop !== undefined && stop.sent.outcome !== 'lost' && waiting.length > 0
  part(box, 'own', sentence !== '', (own) => {
    say(own, '[data-waiting-why]', sentence)
    own.classList.toggle('survey-kept-held', isHeld)
    list(own, isHeld ? waiting : [], (one) => lineOf(box, one, says))
    const again = own.querySelector<HTMLElement>('[data-waiting-again]')
    if (again) again.hidden = !isHeld || stop.sent.outcome === 'correct'
  })
  const others = queue.ofOthers().map(({ by, count }) => fill(says.ofOthers, { count, name: by }))
  part(box, 'others', others.length > 0, (theirs) => {
    say(theirs, '[data-waiting-why]', others.join(' '))
  })
  const old = queue.nameless()
  part(box, 'nameless', old.length > 0, (nobodys) => {
    const values = old.map((body) => body.get('value')).join('; ')
    say(nobodys, '[data-waiting-why]', fill(says.nameless, { count: old.length, values }))
  })
}

function ownSentence(says: Says, count: number, stop: SurveyStop | undefined): string {
  // One that is just being sent is nobody's worry.
  if (count === 0 || (stop === undefined && count === 1)) return ''
  const sent = stop?.sent ?? { outcome: 'lost' as const }
  const why =
    'why' in sent && sent.why === ''
      ? fill(says.status, { status: sent.status })
      : 'why' in sent
        ? sent.why
        : ''
  return fill(says[sent.outcome], { count, why })
}

function part(
  box: HTMLElement,
  name: string,
  isShown: boolean,
  write: (element: HTMLElement) => void,
): void {
  const element = box.querySelector<HTMLElement>(`[data-waiting="${name}"]`)
  if (!element) return
  element.hidden = !isShown
  write(element)
}

/** A live region is read out once for each change, so the same words are not written again. */
function say(within: HTMLElement, selector: string, text: string): void {
  const element = within.querySelector(selector)
  if (element && element.textContent !== text) element.textContent = text
}

/** Only what changed is written anew: a button keeps the focus, and stays under the finger. */
function list(
  within: HTMLElement,
  waiting: readonly WaitingReading[],
  line: (one: WaitingReading) => Node,
): void {
  const element = within.querySelector<HTMLElement>('[data-waiting-list]')
  const keys = waiting.map((one) => one.formKey).join(' ')
  if (!element || element.dataset.keys === keys) return
  element.dataset.keys = keys
  element.replaceChildren(...waiting.map(line))
}

function lineOf(box: HTMLElement, one: WaitingReading, says: Says): Node {
  const template = box.querySelector<HTMLTemplateElement>('template[data-waiting-line]')
  const line = document.importNode((template as HTMLTemplateElement).content, true)
  const value = line.querySelector('[data-line-value]')
  const where = line.querySelector('[data-line-where]')
  const discard = line.querySelector<HTMLElement>('[data-discard]')
  if (value) value.textContent = value.textContent?.replace('#', one.value) ?? one.value
  if (where) where.textContent = one.where
  if (discard) {
    discard.dataset.discard = one.formKey
    discard.setAttribute('aria-label', fill(says.discard, { value: one.value, where: one.where }))
  }
  return line
}

/** Puts values into the places that a sentence keeps for them: {count}. */
function fill(sentence: string, values: Readonly<Record<string, string | number>>): string {
  return sentence.replace(/\{(\w+)\}/g, (whole, name: string) => String(values[name] ?? whole))
}
