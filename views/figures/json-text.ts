/**
 * JSON as people read it, indented by two; text that is no JSON as it is.
 * @param text as stored, in one line
 * @example jsonText('{"a":1}').length // 12
 */
export function jsonText(text: string): string {
  try {
    return JSON.stringify(JSON.parse(text), null, 2)
  } catch {
    return text
  }
}
