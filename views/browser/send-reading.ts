import type { WaitingReading } from './survey-queue.ts'

/**
 * What became of a reading that was sent. `kept`: it is recorded; `correct`: the page that came
 * back says what is wrong with it; `refused`: it can't be recorded as things stand; `unable`: the
 * server is there and does not manage; `lost`: nothing is there. `why` is the server's own
 * sentence, where the answer is a page of ours.
 */
export type SentReading =
  | { readonly outcome: 'kept'; readonly html: string }
  | { readonly outcome: 'correct'; readonly html: string }
  | { readonly outcome: 'refused' | 'unable'; readonly status: number; readonly why: string }
  | { readonly outcome: 'signed-out'; readonly url: string }
  | { readonly outcome: 'lost' }

/** A network that swallows what is sent is waited for no longer. */
const patienceMs = 10_000
/** Refusals that time heals by itself. */
const passing = [401, 407, 408, 421, 425, 429]

/**
 * Sends a reading and looks what came of it. Only a recorded reading leads back to the page of its
 * survey: any other answer, whatever its status, proves nothing.
 * @param path of the page of the survey
 */
export async function sendReading(one: WaitingReading, path: string): Promise<SentReading> {
  try {
    const response = await fetch(one.action, {
      method: 'POST',
      headers: { 'content-type': 'application/x-www-form-urlencoded' },
      body: one.body,
      signal: AbortSignal.timeout(patienceMs),
    })
    const { status, ok, redirected, url } = response
    const { pathname } = new URL(url)
    if (redirected && pathname === '/sign-in') return { outcome: 'signed-out', url }
    const html = await response.text()
    const page = new DOMParser().parseFromString(html, 'text/html')
    const isSurvey = page.querySelector('main [data-survey-waiting]') !== null
    if (ok && redirected && pathname === path && isSurvey) return { outcome: 'kept', html }
    if (status === 422 && isSurvey) return { outcome: 'correct', html }
    const isFinal = status >= 400 && status < 500 && !passing.includes(status)
    const why = page.querySelector('[data-refusal]')?.textContent ?? ''
    return { outcome: isFinal ? 'refused' : 'unable', status, why }
  } catch (error) {
    // No network, or none that answers in time.
    if (error instanceof TypeError || error instanceof DOMException) return { outcome: 'lost' }
    throw error
  }
}
