import type { CertificateRecord } from '../../src/domain/certificate.ts'
import type {
  CertifiedAssembly,
  CertifiedHand,
  CertifiedSpring,
  CertifiedTrack,
} from '../../src/domain/certified-strip.ts'
import { type SpringLineOptions, springLine } from '../../src/plots/spring-line.ts'
import { wornTrackPicture } from '../../src/plots/worn-track-picture.ts'
import { assemblySign } from '../../views/words/en/assembly-sign.ts'
import { certificateWords } from '../../views/words/en/certificate.ts'
import { assemblyLineOf, springLineOf } from '../../views/words/en/spring-line-texts.ts'
import {
  springCheckWords,
  stripRecordsWords,
  wearTrackWords,
} from '../../views/words/en/strip-records.ts'
import {
  assemblyTexts,
  handTexts,
  type StripTexts,
  springTexts,
  trackTexts,
} from '../../views/words/en/strip-texts.ts'
import { wornTrackOf } from '../../views/words/en/worn-track-texts.ts'
import type { Block, Cell, Line, Picture, TableBlock } from '../document.ts'
import { printMoment } from './print-when.ts'

const { certificate: words, conditions, drawing, assembly: assemblyTitle } = stripRecordsWords
const shares = [95, 150, 215] as const
/** As wide as its cell: it is scaled into it. */
const widthPx = 320

/** Worn tracks, springs and how the seal was put together; nothing where none was recorded. */
export function stripBlocks(record: CertificateRecord): readonly Block[] {
  const { wearTracks = [], springs = [], assembly } = record
  const rows = [
    ...wearTracks.map(trackRow),
    ...springs.map(springRow),
    ...(assembly === undefined ? [] : [assemblyRow(assembly)]),
  ]
  if (rows.length === 0) return []
  return [
    { kind: 'subheading', text: words.heading },
    {
      kind: 'table',
      columns: words.columns.map((title, index) => ({ title, share: shares[index] ?? 1 })),
      rows,
    },
    { kind: 'paragraph', text: words.note },
  ]
}

type Row = TableBlock['rows'][number]

function trackRow(one: CertifiedTrack): Row {
  const face = certificateWords.item.componentKinds[one.face]
  const texts = trackTexts(one)
  const drawn = wornTrackPicture(wornTrackOf(one, widthPx))
  const picture = { drawing: drawn, alternative: told(wearTrackWords.drawing, texts) }
  return row(one, [strong(wearTrackWords.act), { text: face }], texts, picture)
}

function springRow(one: CertifiedSpring): Row {
  const what = [strong(springCheckWords.act), { text: conditions[one.condition] }]
  const texts = springTexts(one)
  return row(one, what, texts, pictureOf(springLineOf(one, widthPx), texts))
}

function assemblyRow(one: CertifiedAssembly): Row {
  const { verdict, word } = assemblySign(one)
  const texts = assemblyTexts(one)
  const picture = pictureOf(assemblyLineOf(one, widthPx), texts)
  return row(one, [strong(assemblyTitle), { text: word, mark: verdict }], texts, picture)
}

function row(
  hand: CertifiedHand,
  what: readonly Line[],
  { read, follows }: StripTexts,
  picture?: Picture,
): Row {
  const last = cell(follows)
  const cells = [
    { lines: what },
    cell(read),
    picture === undefined ? last : { ...last, bar: picture },
  ]
  return { cells, note: handTexts(hand, printMoment).join('. ') }
}

function pictureOf(line: SpringLineOptions | null, texts: StripTexts): Picture | undefined {
  if (line === null) return undefined
  return { drawing: springLine(line), alternative: told(drawing.title, texts) }
}

function told(title: string, { read, follows }: StripTexts): string {
  return `${title}: ${[...read, ...follows].join('; ')}`
}

function cell(texts: readonly string[]): Cell {
  return { lines: texts.map((text) => ({ text })) }
}

function strong(text: string): Line {
  return { text, style: 'strong' }
}
