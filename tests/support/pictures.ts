/** Small pictures of our own, byte by byte, with what a phone writes beside the picture. */

const segment = (marker: number, data: Buffer): Buffer => {
  const head = Buffer.from([0xff, marker, 0, 0])
  head.writeUInt16BE(data.length + 2, 2)
  return Buffer.concat([head, data])
}

/** An EXIF of one directory: which side is up, and a place in plain sight. */
export function exifData(orientation: number, isLittle = false): Buffer {
  const tiff = Buffer.alloc(26)
  tiff.write(isLittle ? 'II' : 'MM', 'latin1')
  const u16 = (value: number, at: number) =>
    isLittle ? tiff.writeUInt16LE(value, at) : tiff.writeUInt16BE(value, at)
  const u32 = (value: number, at: number) =>
    isLittle ? tiff.writeUInt32LE(value, at) : tiff.writeUInt32BE(value, at)
  u16(42, 2)
  u32(8, 4)
  u16(1, 8)
  u16(0x0112, 10)
  u16(3, 12)
  u32(1, 14)
  u16(orientation, 18)
  return Buffer.concat([Buffer.from('Exif\0\0', 'latin1'), tiff, Buffer.from('GPS 51.5 N')])
}

/** Scan data with a stuffed byte, a restart marker and a fill byte before the end. */
const scan = Buffer.from('1122ff0033ffd04455', 'hex')
const jfif = segment(0xe0, Buffer.from('JFIF\0\x01\x02\0\0\x01\0\x01\0\0', 'latin1'))
/** The same with a preview of one pixel, of red, green and blue. */
const jfifPreview = segment(0xe0, Buffer.from('JFIF\0\x01\x02\0\0\x01\0\x01\x01\x01GPS', 'latin1'))
const quantization = segment(0xdb, Buffer.alloc(65, 1))
const startOfScan = segment(0xda, Buffer.from('0101003f00', 'hex'))

export function jpeg(
  more: {
    readonly beside?: readonly Buffer[]
    readonly after?: Buffer
    readonly hasPreview?: boolean
  } = {},
): Buffer {
  return Buffer.concat([
    Buffer.from('ffd8', 'hex'),
    more.hasPreview === true ? jfifPreview : jfif,
    ...(more.beside ?? []),
    quantization,
    startOfScan,
    scan,
    Buffer.from('ffd9', 'hex'),
    more.after ?? Buffer.alloc(0),
  ])
}

export const jpegParts = {
  exif: (orientation = 1, isLittle = false) => segment(0xe1, exifData(orientation, isLittle)),
  xmp: segment(0xe1, Buffer.from('http://ns.adobe.com/xap/1.0/\0<x>GPS</x>', 'latin1')),
  iptc: segment(0xed, Buffer.from('Photoshop 3.0\0GPS', 'latin1')),
  comment: segment(0xfe, Buffer.from('GPS')),
  profile: segment(0xe2, Buffer.from('ICC_PROFILE\0\x01\x01colours', 'latin1')),
  preview: segment(0xe0, Buffer.from('JFXX\0\x10GPS', 'latin1')),
  more: segment(0xe2, Buffer.from('MPF\0GPS', 'latin1')),
} as const

const pngChunk = (name: string, data: Buffer): Buffer => {
  const length = Buffer.alloc(4)
  length.writeUInt32BE(data.length)
  return Buffer.concat([length, Buffer.from(name, 'latin1'), data, Buffer.alloc(4)])
}

export function png(beside: readonly (readonly [name: string, data: string])[] = []): Buffer {
  return Buffer.concat([
    Buffer.from('89504e470d0a1a0a', 'hex'),
    pngChunk('IHDR', Buffer.alloc(13)),
    ...beside.map(([name, data]) => pngChunk(name, Buffer.from(data))),
    pngChunk('IDAT', Buffer.from('pixels')),
    pngChunk('IEND', Buffer.alloc(0)),
  ])
}

const webpChunk = (name: string, data: Buffer): Buffer => {
  const length = Buffer.alloc(4)
  length.writeUInt32LE(data.length)
  const padding = Buffer.alloc(data.length % 2)
  return Buffer.concat([Buffer.from(name, 'latin1'), length, data, padding])
}

/** Its flags promise EXIF and XMP where `beside` holds them. */
export function webp(beside: readonly (readonly [name: string, data: string])[] = []): Buffer {
  const flags = Buffer.alloc(10)
  for (const [name] of beside) flags[0] = (flags[0] ?? 0) | (name === 'EXIF' ? 0x08 : 0x04)
  const body = Buffer.concat([
    Buffer.from('WEBP', 'latin1'),
    webpChunk('VP8X', flags),
    webpChunk('VP8 ', Buffer.from('pixel')),
    ...beside.map(([name, data]) => webpChunk(name, Buffer.from(data))),
  ])
  const length = Buffer.alloc(4)
  length.writeUInt32LE(body.length)
  return Buffer.concat([Buffer.from('RIFF', 'latin1'), length, body])
}
