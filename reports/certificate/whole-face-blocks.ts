import type { CertificateRecord } from '../../src/domain/certificate.ts'
import type {
  CertifiedFace,
  CertifiedFlatness,
  CertifiedWholeFace,
} from '../../src/domain/certified-results.ts'
import { mapOfWholeFace } from '../../src/domain/map-of-whole-face.ts'
import { toldMap } from '../../src/domain/told-map.ts'
import { drawnRatio } from '../../src/plots/drawn-ratio.ts'
import { wholeFaceDrawings } from '../../src/plots/whole-face-drawings.ts'
import { certificateWords } from '../../views/words/en/certificate.ts'
import { wholeFaceWords as words } from '../../views/words/en/whole-face.ts'
import { wholeFaceAlternatives } from '../../views/words/en/whole-face-alternatives.ts'
import { wholeFacePairs } from '../../views/words/en/whole-face-pairs.ts'
import { wholeFaceTexts } from '../../views/words/en/whole-face-texts.ts'
import type { Block, Fact } from '../document.ts'

const { results, item } = certificateWords

/** The maps of the faces that were read as a whole, as found and as left. */
export function wholeFaceBlocks({ faces }: CertificateRecord): readonly Block[] {
  return faces.flatMap((face) =>
    [face.asFound, face.asLeft].flatMap((reading) =>
      reading?.wholeFace === undefined ? [] : blocksOf(face, reading, reading.wholeFace),
    ),
  )
}

function blocksOf(
  face: CertifiedFace,
  reading: CertifiedFlatness,
  whole: CertifiedWholeFace,
): readonly Block[] {
  const condition = reading.condition === 'as-found' ? results.asFound : results.asLeft
  const title = `${words.mapTitle}: ${item.componentKinds[face.kind]}, ${condition}`
  return [
    { kind: 'subheading', text: title },
    ...figuresOf(whole),
    { kind: 'facts', facts: [...judgedFact(reading), ...wholeFacePairs(whole)] },
    { kind: 'paragraph', text: notesOf(whole).join(' '), style: 'small' },
  ]
}

/** The figure that was held against the limit, beside those that were not. */
function judgedFact({ flatnessUm, expandedUncertaintyUm, wholeFace }: CertifiedFlatness): Fact[] {
  if (flatnessUm === null || expandedUncertaintyUm === null) return []
  const value = words.judged(flatnessUm.text, expandedUncertaintyUm.text)
  const { flatness, flatnessByLines } = words.figures
  return [{ label: wholeFace?.surface === null ? flatnessByLines : flatness, value }]
}

function figuresOf(whole: CertifiedWholeFace): readonly Block[] {
  const map = mapOfWholeFace(whole)
  if (map === null) return []
  const drawings = wholeFaceDrawings(map, wholeFaceTexts)
  const told = wholeFaceAlternatives(toldMap(map))
  return [
    {
      kind: 'figures',
      large: {
        picture: { drawing: drawings.map, alternative: told.map },
        caption: words.contours,
      },
      small: [
        {
          picture: { drawing: drawings.across, alternative: told.across },
          caption: words.acrossTitle,
        },
        {
          picture: { drawing: drawings.around, alternative: told.around },
          caption: words.aroundTitle,
        },
      ],
    },
  ]
}

function notesOf(whole: CertifiedWholeFace): readonly string[] {
  const { lineGridBands, innerDiameterMm, outerDiameterMm } = whole
  const cautions = whole.cautions.map((one) => words.caution[one])
  if (whole.surface === null) {
    return [
      ...(lineGridBands === undefined
        ? []
        : [words.lineGrid(lineGridBands.oneWay.text, lineGridBands.otherWay.text)]),
      words.referenceLineGrid,
      ...cautions,
    ]
  }
  const ratio = innerDiameterMm / outerDiameterMm
  return [
    words.reference,
    words.legend,
    ...(drawnRatio(ratio) < ratio ? [words.drawnWider] : []),
    ...(whole.isSignKnown ? [] : [words.upsideDown]),
    ...cautions,
  ]
}
