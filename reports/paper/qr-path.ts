import { encode } from 'uqr'

/** The quiet zone that readers of codes need around one (ISO/IEC 18004), in modules. */
const borderModules = 4

/**
 * A QR code as one path, dark modules merged along each row, for vector drawing.
 * @param text what the code says; error correction M
 * @returns `d`: the path, one unit a module; `sizeModules`: the side including the quiet zone
 * @example qrPath('x').sizeModules // 29
 */
export function qrPath(text: string): { readonly d: string; readonly sizeModules: number } {
  const { data, size } = encode(text, { ecc: 'M', border: borderModules })
  let d = ''
  data.forEach((row, y) => {
    let x = 0
    while (x < size) {
      let width = 0
      while (row[x + width] === true) width += 1
      if (width > 0) d += `M${x} ${y}L${x + width} ${y}L${x + width} ${y + 1}L${x} ${y + 1}Z`
      x += width + 1
    }
  })
  return { d, sizeModules: size }
}
