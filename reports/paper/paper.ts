import PDFDocument from 'pdfkit'
import type { Tone } from '../../src/plots/drawing.ts'
import { printTones } from '../../src/plots/print-tones.ts'
import { type FontName, fontFile } from '../fonts/font-file.ts'
import { printableText } from './printable-text.ts'
import { type StyleName, textStyles } from './text-styles.ts'
import { wrapText } from './wrap-text.ts'

export type Structure = PDFKit.PDFStructureElement

/** A PDF being drawn: PDFKit with our fonts, text measured before it is set, tags around it. */
export type Paper = {
  readonly pdf: PDFKit.PDFDocument
  /** The document's own element of the structure tree. */
  readonly root: Structure
  readonly colour: (tone: Tone) => string
  readonly printable: (text: string) => string
  readonly widthPt: (text: string, style: StyleName) => number
  readonly wrap: (text: string, style: StyleName, widthPt: number) => readonly string[]
  /** Sets one line with its upper edge at `y`, flush left at `x` or, for `end`, ending there. */
  readonly set: (text: string, style: StyleName, at: Place) => void
  /** Draws something that carries no meaning: rules, tints, what repeats on each page. */
  readonly ornament: (draw: () => void, type?: 'Layout' | 'Pagination') => void
  /** A tagged element whose content is drawn at once. */
  readonly tag: (parent: Structure, type: string, draw: () => void, options?: TagOptions) => void
  readonly finish: () => Promise<Buffer>
}

export type Place = {
  readonly x: number
  readonly y: number
  readonly anchor?: 'start' | 'middle' | 'end'
}

export type TagOptions = {
  readonly alt?: string
  readonly bbox?: [number, number, number, number]
  readonly scope?: 'Column' | 'Row'
}

export type PaperInfo = {
  readonly title: string
  readonly subject: string
  readonly author: string
  readonly language: string
  readonly createdAt: string
}

/** Opens an empty document; pages are added by who draws. */
export function openPaper(info: PaperInfo): Paper {
  const pdf = newDocument(info)
  const isFinished = collected(pdf)
  for (const name of ['regular', 'strong'] as const) pdf.registerFont(name, fontFile(name))
  const root = pdf.struct('Document')
  pdf.addStructure(root)
  const printable = printableIn(pdf)
  const choose = (style: StyleName) => {
    const { font, sizePt } = textStyles[style]
    return pdf.font(font satisfies FontName).fontSize(sizePt)
  }
  const widthPt: Paper['widthPt'] = (text, style) => choose(style).widthOfString(text)
  return {
    pdf,
    root,
    printable,
    widthPt,
    colour: (tone) => printTones[tone],
    wrap: (text, style, width) => wrapText(printable(text), width, (part) => widthPt(part, style)),
    set: (text, style, { x, y, anchor = 'start' }) => {
      const shift = { start: 0, middle: 0.5, end: 1 }[anchor] * widthPt(text, style)
      const { sizePt, leadingPt, tone } = textStyles[style]
      const baseLine = y + leadingPt / 2 + sizePt * 0.33
      choose(style)
        .fillColor(printTones[tone])
        .text(text, x - shift, baseLine, { lineBreak: false, baseline: 'alphabetic' })
    },
    ornament: (draw, type = 'Layout') => {
      pdf.markContent('Artifact', { type })
      draw()
      pdf.endMarkedContent()
    },
    tag: (parent, type, draw, options = {}) => {
      parent.add(pdf.struct(type, structOptions(options), [draw]))
    },
    finish: () => {
      root.end()
      pdf.end()
      return isFinished
    },
  }
}

/** PDFKit reads a `scope` too, which its type declaration leaves out. */
function structOptions(options: TagOptions): PDFKit.Mixins.StructureElementOptions {
  return { ...options, ...(options.bbox === undefined ? {} : { placement: 'Block' }) }
}

function newDocument(info: PaperInfo): PDFKit.PDFDocument {
  const created = new Date(info.createdAt)
  const { title, subject, author, language } = info
  return new PDFDocument({
    size: 'A4',
    margin: 0,
    pdfVersion: '1.7',
    tagged: true,
    lang: language,
    displayTitle: true,
    autoFirstPage: false,
    bufferPages: true,
    // No standard font: only embedded ones print our signs.
    font: '',
    info: {
      Title: title,
      Subject: subject,
      Author: author,
      Creator: 'Ringproof',
      Producer: 'Ringproof',
      CreationDate: created,
      ModDate: created,
    },
  })
}

function collected(pdf: PDFKit.PDFDocument): Promise<Buffer> {
  const parts: Uint8Array[] = []
  return new Promise((resolve, reject) => {
    pdf.on('data', (part: Uint8Array) => parts.push(part))
    pdf.on('end', () => resolve(Buffer.concat(parts)))
    pdf.on('error', reject)
  })
}

/** The open font of PDFKit knows its glyphs; the type declaration does not say so. */
type GlyphFont = { readonly _font: { readonly font: { hasGlyphForCodePoint(p: number): boolean } } }

function printableIn(pdf: PDFKit.PDFDocument): (text: string) => string {
  pdf.font('regular')
  const { font } = (pdf as unknown as GlyphFont)._font
  return (text) => printableText(text, (point) => font.hasGlyphForCodePoint(point))
}
