/**
 * Switches the view on the spot, so that a reading half entered is not lost for the lamp view. The
 * form is posted all the same, since the next page is drawn as it says; without script it is
 * posted as any form.
 */

const isSwitcher = (target: EventTarget | null): target is HTMLFormElement =>
  target instanceof HTMLFormElement && target.matches('.view-switcher')

function show(form: HTMLFormElement, view: string): void {
  const { dataset } = document.documentElement
  if (view === 'auto') delete dataset.view
  else dataset.view = view
  for (const button of form.querySelectorAll('button')) {
    button.setAttribute('aria-pressed', button.value === view ? 'true' : 'false')
  }
}

document.addEventListener('submit', (event) => {
  const { target, submitter } = event
  if (!isSwitcher(target) || !(submitter instanceof HTMLButtonElement)) return
  event.preventDefault()
  show(target, submitter.value)
  const body = new URLSearchParams({ view: submitter.value })
  void fetch(target.action, { method: 'POST', body, redirect: 'manual', keepalive: true })
})

export {}
