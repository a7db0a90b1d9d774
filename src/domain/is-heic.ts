/** A container of ISO/IEC 14496-12 with a still picture, whatever it is called (from memory). */
export function isHeic(bytes: Buffer): boolean {
  const box = bytes.toString('latin1', 4, 12)
  return box.startsWith('ftyp') && /^ftyp(hei|hev|mif|msf|avi)/.test(box)
}
