/** What a browser would post of a page's form: its fields and the key, as they were drawn. */
export function formOf(html: string): Record<string, string> {
  const form: Record<string, string> = {}
  const text = (value: string) =>
    value.replaceAll('&#39;', "'").replaceAll('&quot;', '"').replaceAll('&amp;', '&')
  const main = html.slice(html.indexOf('<main'))
  for (const [tag] of main.matchAll(/<input[^>]*>/g)) {
    const name = / name="([^"]*)"/.exec(tag)?.[1]
    if (name === undefined || tag.includes('type="checkbox"')) continue
    form[name] = text(/ value="([^"]*)"/.exec(tag)?.[1] ?? '')
  }
  for (const [, name = '', body = ''] of main.matchAll(
    /<select[^>]* name="([^"]*)"[^>]*>(.*?)<\/select>/gs,
  )) {
    form[name] = text(/<option value="([^"]*)" selected/.exec(body)?.[1] ?? '')
  }
  for (const [, name = '', body = ''] of main.matchAll(
    /<textarea[^>]* name="([^"]*)"[^>]*>(.*?)<\/textarea>/gs,
  )) {
    form[name] = text(body)
  }
  return form
}
