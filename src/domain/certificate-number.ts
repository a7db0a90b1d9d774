/** Digits and capitals without those that are mistaken for one another: 0 and O, 1 and I. */
const alphabet = '23456789ABCDEFGHJKLMNPQRSTUVWXYZ'

/** Random signs at the end of a certificate's number, so that nobody guesses the next one. */
export const certificateCodeLength = 6

/**
 * The random end of a certificate's number, 30 bits.
 * @param bytes one random byte a sign; 32 signs divide 256, so none is likelier than another
 * @throws RangeError where there are not as many bytes as signs
 * @example certificateCode(Uint8Array.from([0, 7, 8, 31, 32, 255])) // 29AZ2Z
 */
export function certificateCode(bytes: Uint8Array): string {
  if (bytes.length !== certificateCodeLength) {
    throw new RangeError(
      `certificateCode requires bytes from ${certificateCodeLength} to ${certificateCodeLength}, got ${bytes.length}`,
    )
  }
  return [...bytes].map((byte) => alphabet[byte % alphabet.length]).join('')
}

/**
 * The number that someone typed from a certificate, as it is written there: capitals, spaces and
 * dashes are forgiven, and so is a letter O for a nought in the year or the sequence. Undefined
 * where it can't be one of our numbers.
 * @example readCertificateNumber(' c 2026 0042 k7qx3m ') // C-2026-0042-K7QX3M
 */
export function readCertificateNumber(typed: string): string | undefined {
  const signs = typed.toUpperCase().replaceAll(/[\s\p{Pd}.]/gu, '')
  const parts = /^C([\dO]{4})([\dO]{4,9})([\dA-Z]{6})$/.exec(signs)
  if (parts === null) return undefined
  const [year = '', sequence = '', code = ''] = parts.slice(1)
  return `C-${year.replaceAll('O', '0')}-${sequence.replaceAll('O', '0')}-${code}`
}
