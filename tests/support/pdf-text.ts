import { inflateSync } from 'node:zlib'

/** What a page says, and where: texts in the order of drawing. */
export type PdfPage = { readonly text: string; readonly runs: readonly PdfRun[] }
export type PdfRun = { readonly text: string; readonly x: number; readonly y: number }

/**
 * The text of a PDF as a reader finds it, through the fonts' own maps from glyphs to characters.
 * It reads what PDFKit writes and no more: deflated streams, objects one by one, two-byte glyphs.
 */
export function pdfPages(pdf: Buffer): readonly PdfPage[] {
  const objects = readObjects(pdf)
  const pages = [...objects.values()].filter((one) => /\/Type \/Page\b/.test(one.head))
  if (pages.length === 0) throw new Error('pdfPages found no page')
  return pages.map((page) => {
    const content = objects.get(reference(page.head, 'Contents') ?? -1)
    const resources = objects.get(reference(page.head, 'Resources') ?? -1)
    if (content?.stream === undefined) throw new Error('pdfPages found a page without content')
    const runs = readRuns(content.stream, fontMaps(objects, resources?.head ?? page.head))
    return { runs, text: runs.map((one) => one.text).join('\n') }
  })
}

/** All pages in one, white space made single: what a long sentence is looked for in. */
export function pdfText(pdf: Buffer): string {
  const all = pdfPages(pdf).map((page) => page.text)
  return all.join('\n').replace(/\s+/g, ' ')
}

type PdfObject = { readonly head: string; readonly stream: string | undefined }

function readObjects(pdf: Buffer): ReadonlyMap<number, PdfObject> {
  const text = pdf.toString('latin1')
  const objects = new Map<number, PdfObject>()
  for (const match of text.matchAll(/(?:^|\n)(\d+) 0 obj\n/g)) {
    const from = match.index + match[0].length
    const end = text.indexOf('\nendobj', from)
    const streamAt = text.indexOf('\nstream\n', from)
    const hasStream = streamAt !== -1 && streamAt < end
    const head = text.slice(from, hasStream ? streamAt : end)
    const length = Number(/\/Length (\d+)/.exec(head)?.[1])
    const bytes = pdf.subarray(streamAt + 8, streamAt + 8 + length)
    const isDeflated = head.includes('/FlateDecode')
    const stream = hasStream ? (isDeflated ? inflateSync(bytes) : bytes) : undefined
    objects.set(Number(match[1]), { head, stream: stream?.toString('latin1') })
  }
  return objects
}

function reference(head: string, name: string): number | undefined {
  const match = new RegExp(`/${name} (\\d+) 0 R`).exec(head)
  return match === null ? undefined : Number(match[1])
}

type GlyphMap = ReadonlyMap<string, string>

function fontMaps(
  objects: ReadonlyMap<number, PdfObject>,
  resources: string,
): ReadonlyMap<string, GlyphMap> {
  const fonts = /\/Font <<([\s\S]*?)>>/.exec(resources)?.[1] ?? ''
  const maps = new Map<string, GlyphMap>()
  for (const [, name = '', id = ''] of fonts.matchAll(/\/(\w+) (\d+) 0 R/g)) {
    const font = objects.get(Number(id))
    const map = objects.get(reference(font?.head ?? '', 'ToUnicode') ?? -1)?.stream
    if (map === undefined) throw new Error(`pdfPages found no ToUnicode map for ${name}`)
    maps.set(name, readGlyphMap(map))
  }
  return maps
}

/** PDFKit writes `<from> <to> [<characters of from> <of the next> …]`. */
function readGlyphMap(map: string): GlyphMap {
  const glyphs = new Map<string, string>()
  for (const [, first = '', list = ''] of map.matchAll(
    /<([0-9a-f]{4})> <[0-9a-f]{4}> \[([^\]]*)\]/gi,
  )) {
    list.match(/<[^>]*>/g)?.forEach((entry, index) => {
      const glyph = (Number.parseInt(first, 16) + index).toString(16).padStart(4, '0')
      const units = entry.slice(1, -1).replace(/\s/g, '').match(/.{4}/g) ?? []
      glyphs.set(
        glyph,
        units.map((unit) => String.fromCharCode(Number.parseInt(unit, 16))).join(''),
      )
    })
  }
  return glyphs
}

type Matrix = readonly [number, number, number, number, number, number]

const plain: Matrix = [1, 0, 0, 1, 0, 0]
const steps = /\bBT\b[\s\S]*?\bET\b|(?<=\n|^)(?:q|Q|[-\d. ]+ cm)(?=\n)/g

/** Follows the transformations, so that texts inside drawings have their place on the page. */
function readRuns(stream: string, maps: ReadonlyMap<string, GlyphMap>): readonly PdfRun[] {
  const runs: PdfRun[] = []
  const kept: Matrix[] = []
  let now = plain
  for (const [step] of stream.matchAll(steps)) {
    if (step === 'q') kept.push(now)
    else if (step === 'Q') now = kept.pop() ?? plain
    else if (step.endsWith('cm')) now = times(numbers(step), now)
    else runs.push(readRun(step, now, maps))
  }
  return runs
}

function readRun(block: string, now: Matrix, maps: ReadonlyMap<string, GlyphMap>): PdfRun {
  const font = /\/(\w+) [\d.]+ Tf/.exec(block)?.[1] ?? ''
  const map = maps.get(font)
  const [place] = /[-\d. ]+(?= Tm)/.exec(block) ?? []
  if (map === undefined || place === undefined) throw new Error(`pdfPages cannot read ${block}`)
  const glyphs = [...block.matchAll(/<([0-9a-f]+)>/gi)].flatMap(
    (one) => one[1]?.match(/.{4}/g) ?? [],
  )
  const text = glyphs.map((glyph) => map.get(glyph.toLowerCase()) ?? '\uFFFD').join('')
  const [, , , , x, y] = times(numbers(place), now)
  return { text, x, y }
}

function numbers(text: string): Matrix {
  const [a = 1, b = 0, c = 0, d = 1, e = 0, f = 0] = text.trim().split(/\s+/).map(Number)
  return [a, b, c, d, e, f]
}

function times(m: Matrix, n: Matrix): Matrix {
  return [
    m[0] * n[0] + m[1] * n[2],
    m[0] * n[1] + m[1] * n[3],
    m[2] * n[0] + m[3] * n[2],
    m[2] * n[1] + m[3] * n[3],
    m[4] * n[0] + m[5] * n[2] + n[4],
    m[4] * n[1] + m[5] * n[3] + n[5],
  ]
}
