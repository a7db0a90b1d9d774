import type { CertificateRecord } from '../../src/domain/certificate.ts'
import type {
  CertifiedFace,
  CertifiedFlatness,
  CertifiedLimit,
  Figure,
} from '../../src/domain/certified-results.ts'
import { flatnessSees } from '../../src/domain/flatness-sees.ts'
import { bandPicture } from '../../src/plots/band-picture.ts'
import { certificateWords } from '../../views/words/en/certificate.ts'
import { finishTexts } from '../../views/words/en/finish-texts.ts'
import { flatnessSeesWords } from '../../views/words/en/flatness-sees.ts'
import { tradeWords } from '../../views/words/en/trade.ts'
import type { Block, Cell, Line, TableBlock } from '../document.ts'
import { printMaterial } from './item.ts'
import { limitCell, limitPicture, verdictLine } from './limit-cell.ts'
import { printMoment } from './print-when.ts'

const { results: words, conditions, item, ...common } = certificateWords
const picturePx = 66

/** Each face with what was found beside what was left. */
export function flatnessBlocks(record: CertificateRecord): readonly Block[] {
  return [
    { kind: 'subheading', text: words.flatness },
    {
      kind: 'table',
      columns: words.flatnessColumns.map((title, index) => ({
        title,
        share: [80, 126, 126, 130][index] ?? 1,
      })),
      rows: record.faces.map((face) => withOrder({ cells: faceCells(face) }, face, record)),
    },
  ]
}

/** Where a face was matted: in which order it was read and matted. */
function withOrder(
  row: TableBlock['rows'][number],
  { kind }: CertifiedFace,
  { lapping }: CertificateRecord,
): TableBlock['rows'][number] {
  const order = lapping.find((one) => one.face === kind)?.finish
  const texts = finishTexts(order, printMoment).map((one) => one.text)
  return texts.length === 0 ? row : { ...row, note: texts.join(' ') }
}

function faceCells(face: CertifiedFace): readonly Cell[] {
  const { asFound, asLeft, limit } = face
  return [
    { lines: faceLines(face) },
    readingCell(asFound),
    readingCell(asLeft),
    withBar(limitCell(limit, 'µm'), limit, asLeft?.flatnessUm ?? null),
  ]
}

/** The bar shows what counts: the face as left. */
function withBar(cell: Cell, limit: CertifiedLimit | null, result: Figure | null): Cell {
  const bar = limit === null || result === null ? undefined : limitPicture(limit, result)
  return bar === undefined ? cell : { ...cell, bar }
}

function faceLines(face: CertifiedFace): readonly Line[] {
  const { outerDiameterMm, innerDiameterMm } = face
  const isSized = outerDiameterMm !== null && innerDiameterMm !== null
  return [
    { text: item.componentKinds[face.kind], style: 'strong' },
    { text: printMaterial(face) },
    {
      text: isSized
        ? words.faceSize(outerDiameterMm.text, innerDiameterMm.text)
        : words.faceSizeUnknown,
      style: 'small',
    },
  ]
}

function readingCell(reading: CertifiedFlatness | null): Cell {
  if (reading === null) return { lines: [{ text: common.notMeasured }] }
  const { pattern } = reading
  const lines = [verdictLine(reading), ...figureLines(reading)]
  if (pattern === 'whole-face') return { lines }
  return {
    lines,
    picture: {
      drawing: bandPicture({ pattern, sizePx: picturePx }),
      alternative: words.pictureAlternative(conditions.patterns[pattern]),
    },
  }
}

function figureLines(reading: CertifiedFlatness): readonly Line[] {
  const { flatnessUm, flatnessUin, bands, expandedUncertaintyUm, coverageFactor } = reading
  if (flatnessUm === null || flatnessUin === null || bands === null) {
    const { unreadableCause: cause } = reading
    return [
      { text: words.unreadable, style: 'value' },
      { text: words.reasons.unreadable },
      ...(cause == null ? [] : [{ text: tradeWords.unreadableCause[cause].toLowerCase() }]),
    ]
  }
  return [
    { text: words.um(flatnessUm.text), style: 'value' },
    {
      text: `${words.uin(flatnessUin.text)}, ${flatnessSeesWords[flatnessSees(reading.method)].short}`,
    },
    { text: words.bands(bands.text, lampName(reading)) },
    { text: words.form(words.forms[reading.form] ?? reading.form) },
    {
      text:
        expandedUncertaintyUm === null
          ? words.noUncertainty
          : words.uncertainty(expandedUncertaintyUm.text, coverageFactor),
      style: 'small',
    },
  ]
}

/** What the bands are counted in: a count without its lamp can't be turned into a height. */
export function lampName({ lampId, wavelengthNm }: CertifiedFlatness): string {
  return lampId === null ? conditions.otherLamp(wavelengthNm.text) : conditions.lamps[lampId]
}
