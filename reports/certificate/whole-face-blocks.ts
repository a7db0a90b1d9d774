import type { CertificateRecord } from '../../src/domain/certificate.ts'
import type {
  CertifiedFace,
  CertifiedFlatness,
  CertifiedWholeFace,
} from '../../src/domain/certified-results.ts'
import { mapOfWholeFace } from '../../src/domain/map-of-whole-face.ts'
import { drawnRatio } from '../../src/plots/drawn-ratio.ts'
import { wholeFaceDrawings } from '../../src/plots/whole-face-drawings.ts'
import { peakAndValley } from '../../src/science/surface/peak-and-valley.ts'
import { certificateWords } from '../../views/words/en/certificate.ts'
import { wholeFaceWords as words } from '../../views/words/en/whole-face.ts'
import { heightText, wholeFaceTexts } from '../../views/words/en/whole-face-texts.ts'
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
  const map = mapOfWholeFace(whole)
  const head: Block = { kind: 'subheading', text: title }
  const facts: Block = { kind: 'facts', facts: factsOf(whole) }
  if (map === null) return [head, facts]
  const drawings = wholeFaceDrawings(map, wholeFaceTexts)
  const { peak, valley } = peakAndValley(map)
  const isWider =
    drawnRatio(whole.innerDiameterMm / whole.outerDiameterMm) <
    whole.innerDiameterMm / whole.outerDiameterMm
  const alternative = words.mapText(heightText(peak.height), heightText(valley.height))
  const notes = [
    words.reference,
    words.legend,
    ...(isWider ? [words.drawnWider] : []),
    ...(whole.isSignKnown ? [] : [words.upsideDown]),
    ...whole.cautions.map((one) => words.caution[one]),
  ]
  return [
    head,
    {
      kind: 'figures',
      large: { picture: { drawing: drawings.map, alternative }, caption: words.contours },
      small: [
        {
          picture: { drawing: drawings.across, alternative: words.acrossText },
          caption: words.acrossTitle,
        },
        {
          picture: { drawing: drawings.around, alternative: words.aroundText },
          caption: words.aroundTitle,
        },
      ],
    },
    facts,
    { kind: 'paragraph', text: notes.join(' '), style: 'small' },
  ]
}

function factsOf(whole: CertifiedWholeFace): readonly Fact[] {
  const { figures: f } = words
  const um = (text: string) => `${text} µm`
  const { minimumZoneUm, rmsUm, taperUm, lobes, surface } = whole
  return [
    { label: f.how, value: words.kind[whole.kind] },
    ...(minimumZoneUm === null ? [] : [{ label: f.minimumZone, value: um(minimumZoneUm.text) }]),
    ...(rmsUm === null ? [] : [{ label: f.rms, value: um(rmsUm.text) }]),
    ...(surface === null
      ? []
      : [{ label: f.taper, value: taperUm === null ? words.notDetermined : um(taperUm.text) }]),
    ...lobes.map(({ order, amplitudeUm, phaseDeg }) => ({
      label: f.lobe(order),
      value: f.wave(amplitudeUm.text, phaseDeg.text),
    })),
  ]
}
