/**
 * Shows a run as it happens: the server tells that readings have come, the page asks for itself again
 * and takes the part that changes. While the connection is lost that is said; the browser tries again
 * by itself, and the first event after it brings everything up to then.
 */

const box = () => document.querySelector<HTMLElement>('[data-live-run]')

let source: EventSource | undefined
let isAsking = false
let isAskedAgain = false
let shown = box()?.dataset.latest ?? ''

function say(text: string | undefined): void {
  const told = document.querySelector('[data-live-told]')
  if (told && told.textContent !== (text ?? '')) told.textContent = text ?? ''
}

/** Draws what the server has by now; asked while it does, it does so again. */
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
      if (!answer.ok || fresh === null) continue
      shown = fresh.dataset.latest ?? ''
      box()?.replaceWith(document.adoptNode(fresh))
    }
  } catch {
    // The stream says when the server is there again.
  } finally {
    isAsking = false
  }
}

function listen(): void {
  const { live, on, lost } = box()?.dataset ?? {}
  if (live === undefined || source !== undefined) return
  source = new EventSource(live)
  source.addEventListener('open', () => say(on))
  source.addEventListener('error', () => say(lost))
  source.addEventListener('readings', (event) => {
    say(on)
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
