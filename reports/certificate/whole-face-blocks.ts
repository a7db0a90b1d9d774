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

type Mapped = {
  readonly face: CertifiedFace
  readonly reading: CertifiedFlatness
  readonly whole: CertifiedWholeFace
}

/** The maps of the faces that were read as a whole, as found and as left, two to a page. */
export function wholeFaceBlocks({ faces }: CertificateRecord): readonly Block[] {
  const mapped = faces.flatMap((face) =>
    [face.asFound, face.asLeft].flatMap((reading): Mapped[] =>
      reading?.wholeFace === undefined ? [] : [{ face, reading, whole: reading.wholeFace }],
    ),
  )
  if (mapped.length === 0) return []
  const text = howToRead(mapped.map((one) => one.whole)).join(' ')
  return [{ kind: 'paragraph', text, style: 'small' }, ...mapped.flatMap(blocksOf)]
}

/** What holds for every map is said once. */
function howToRead(wholes: readonly CertifiedWholeFace[]): readonly string[] {
  const fitted = wholes.filter((one) => one.surface !== null)
  const isNarrow = fitted.some((one) => {
    const ratio = one.innerDiameterMm / one.outerDiameterMm
    return drawnRatio(ratio) < ratio
  })
  return [
    ...(fitted.length === 0 ? [] : [words.reference]),
    ...(fitted.length === wholes.length ? [] : [words.referenceLineGrid]),
    ...(fitted.length === 0 ? [] : [words.legend]),
    ...(isNarrow ? [words.narrowDrawnWider] : []),
    ...(fitted.every((one) => one.isSignKnown) ? [] : [words.upsideDownMap]),
  ]
}

function blocksOf({ face, reading, whole }: Mapped): readonly Block[] {
  const notes = notesOf(whole).join(' ')
  return [
    { kind: 'subheading', text: titleOf(face, reading, whole) },
    ...figuresOf(whole),
    { kind: 'facts', facts: [...judgedFact(reading), ...wholeFacePairs(whole)] },
    ...(notes === '' ? [] : [{ kind: 'paragraph', text: notes, style: 'small' } as const]),
  ]
}

function titleOf(
  face: CertifiedFace,
  { condition }: CertifiedFlatness,
  { surface, isSignKnown }: CertifiedWholeFace,
): string {
  const when = condition === 'as-found' ? results.asFound : results.asLeft
  const title = `${words.mapTitle}: ${item.componentKinds[face.kind]}, ${when}`
  return surface === null || isSignKnown ? title : `${title} (${words.notDetermined})`
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

function notesOf({ lineGridBands, cautions }: CertifiedWholeFace): readonly string[] {
  return [
    ...(lineGridBands === undefined
      ? []
      : [words.lineGrid(lineGridBands.oneWay.text, lineGridBands.otherWay.text)]),
    ...cautions.map((one) => words.caution[one]),
  ]
}
