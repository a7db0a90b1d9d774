import { readFileSync } from 'node:fs'
import { createRequire } from 'node:module'
import { expect, it } from 'vitest'
import { prepareZXingModule, readBarcodes } from 'zxing-wasm/reader'
import { qrPath } from '../../../reports/paper/qr-path.ts'

/** Sets the path's runs of modules as pixels, eight to a module, dark on white. */
function pixelsOf(text: string) {
  const { d, sizeModules } = qrPath(text)
  const modulePx = 8
  const width = sizeModules * modulePx
  const data = new Uint8ClampedArray(width * width * 4).fill(255)
  for (const [, x, y, right] of d.matchAll(/M(\d+) (\d+)L(\d+) /g)) {
    for (let row = Number(y) * modulePx; row < (Number(y) + 1) * modulePx; row++) {
      const from = (row * width + Number(x) * modulePx) * 4
      const to = (row * width + Number(right) * modulePx) * 4
      for (let at = from; at < to; at += 4) data.fill(0, at, at + 3)
    }
  }
  return { data, width, height: width, colorSpace: 'srgb' as const }
}

it('is read back by a reader that is not ours', async () => {
  const wasm = createRequire(import.meta.url).resolve('zxing-wasm/reader/zxing_reader.wasm')
  const wasmBinary = new Uint8Array(readFileSync(wasm)).buffer
  prepareZXingModule({ overrides: { wasmBinary }, fireImmediately: true })
  const address = 'https://seals.example/verify/C-2026-0042-K7QX3M'
  const found = await readBarcodes(pixelsOf(address) as ImageData, { formats: ['QRCode'] })
  expect(found.map((one) => one.text)).toEqual([address])
})
