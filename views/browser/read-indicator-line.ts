/** What a line of an indicator says: a reading as it would be typed, or why it is none. */
export type IndicatorLine =
  | { readonly isReading: true; readonly typed: string }
  | { readonly isReading: false; readonly why: 'not-a-reading' | 'other-unit' }

/** Sign, decimal and unit, and nothing else in the whole line; the micro sign has two codes. */
const pattern =
  /^([-+]?)[ \t]*(\d+(?:[.,]\d+)?|[.,]\d+)[ \t]*(mm|[u\u00b5\u03bc]m|[u\u00b5\u03bc]?in)?$/i

/**
 * Reads a line that an indicator sent. Only a line that is a reading as a whole is one: half of
 * a number is a number too, and nobody would see it. A unit that it carries must be that of the
 * survey, since a foreign one would be recorded as this one; graduations have none.
 * @param unit in which the survey reads: mm, in, um, uin or graduations
 */
export function readIndicatorLine(line: string, unit: string): IndicatorLine {
  const [, sign = '', decimal, given = ''] = pattern.exec(line.trim()) ?? []
  if (decimal === undefined) return { isReading: false, why: 'not-a-reading' }
  const itsUnit = given.toLowerCase().replace(/[\u00b5\u03bc]/, 'u')
  if (itsUnit !== '' && itsUnit !== unit) return { isReading: false, why: 'other-unit' }
  return { isReading: true, typed: `${sign}${decimal}` }
}
