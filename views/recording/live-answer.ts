/**
 * Attributes of the part of a form that the server draws anew as the form is filled in. A newer
 * request takes the place of one that is still on its way, so the answer is always the last one's.
 * It stands inside the form, whose fields htmx then sends along.
 */
export function liveAnswer(address: string): Readonly<Record<string, string>> {
  return {
    'hx-post': address,
    'hx-trigger': "input from:'closest form' delay:120ms, change from:'closest form' delay:20ms",
    'hx-sync': 'replace',
    'hx-swap': 'innerHTML',
  }
}

/** The same for a form that only asks: its fields go into the address, which can be sent. */
export function liveLookUp(address: string): Readonly<Record<string, string>> {
  const { 'hx-post': _, ...rest } = liveAnswer(address)
  return { ...rest, 'hx-get': address, 'hx-include': 'closest form', 'hx-replace-url': 'true' }
}
