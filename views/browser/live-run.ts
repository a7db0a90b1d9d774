/**
 * Shows a run as it happens: the server tells that readings have come, the page asks for itself again
 * and takes the part that changes. While the connection is lost that is said; the browser tries again
 * by itself, and the first event after it brings everything up to then.
 */

const box = () => document.querySelector<HTMLElement>('[data-live-run]')

const againMs = 5000
/** A connection that comes back at once was not lost: the server ends each after some minutes. */
const patienceMs = 3000

let source: EventSource | undefined
let isAsking = false
let isAskedAgain = false
let shown = box()?.dataset.latest ?? ''
let lostTimer: number | undefined

function say(text: string | undefined): void {
  const told = document.querySelector('[data-live-told]')
  if (told && told.textContent !== (text ?? '')) told.textContent = text ?? ''
}

function found(): void {
  clearTimeout(lostTimer)
  lostTimer = undefined
  say(box()?.dataset.on)
}

function lost(): void {
  lostTimer ??= window.setTimeout(() => say(box()?.dataset.lost), patienceMs)
}

/** Draws what the server has by now; asked while it does, it does so again; what fails is tried again. */
async function drawAgain(): Promise<void> {
  isAskedAgain = true
  if (isAsking) return
  isAsking = true
  try {
    while (isAskedAgain) {
      isAskedAgain = false
      const answer = await fetch(location.href)
      const page = new DOMParser().parseFromString(await answer.text(), 'text/html')
      const fresh = page.querySelector<HTMLElement>('[data-live-run]')
      if (!answer.ok || fresh === null) throw new TypeError('no page of a run')
      shown = fresh.dataset.latest ?? ''
      box()?.replaceWith(document.adoptNode(fresh))
    }
  } catch {
    lost()
    setTimeout(() => void drawAgain(), againMs)
  } finally {
    isAsking = false
  }
}

function listen(): void {
  const live = box()?.dataset.live
  if (live === undefined || source !== undefined || document.hidden) return
  const opened = new EventSource(live)
  source = opened
  opened.addEventListener('open', found)
  opened.addEventListener('error', () => {
    lost()
    // A proxy's page or the one to sign in ends it for good: only then it is begun anew here.
    if (opened.readyState !== EventSource.CLOSED || source !== opened) return
    source = undefined
    setTimeout(listen, againMs)
  })
  opened.addEventListener('readings', (event) => {
    found()
    if ((event as MessageEvent<string>).data !== shown) void drawAgain()
  })
}

// A browser opens few connections to one server: a hidden page gives its own back.
document.addEventListener('visibilitychange', () => {
  if (document.hidden) {
    source?.close()
    source = undefined
  } else listen()
})
listen()

export {}
