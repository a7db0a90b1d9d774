import type { CertifiedWholeFace } from '../../../src/domain/certified-results.ts'
import { wholeFaceWords } from './whole-face.ts'

type Pair = { readonly label: string; readonly value: string }

/** Label and value of each further figure of a whole face: page and document say the same. */
export function wholeFacePairs(whole: CertifiedWholeFace): readonly Pair[] {
  const { figures: f, kind } = wholeFaceWords
  const { minimumZoneUm, rmsUm, lobes, seenPercent, surface } = whole
  return [
    { label: f.how, value: kind[whole.kind] },
    ...(minimumZoneUm === null ? [] : [{ label: f.minimumZone, value: f.um(minimumZoneUm.text) }]),
    ...(rmsUm === null ? [] : [{ label: f.rms, value: f.um(rmsUm.text) }]),
    ...(surface === null ? [] : [{ label: f.taper, value: taperText(whole) }]),
    ...lobes.map((one) => ({ label: f.lobe(one.order), value: waveText(one, whole.isSignKnown) })),
    ...(seenPercent === undefined
      ? []
      : [{ label: f.quality, value: f.percent(seenPercent.text) }]),
  ]
}

function taperText({ taperUm, taperSizeUm }: CertifiedWholeFace): string {
  if (taperUm !== null) return wholeFaceWords.figures.um(taperUm.text)
  return taperSizeUm === undefined
    ? wholeFaceWords.notDetermined
    : wholeFaceWords.sizeOnly(taperSizeUm.text)
}

/** A wave of no height has no highest place. */
function waveText(
  { amplitudeUm, phaseDeg }: CertifiedWholeFace['lobes'][number],
  isSignKnown: boolean,
): string {
  const { figures: f } = wholeFaceWords
  if (Number(amplitudeUm.text) === 0) return f.noWave(amplitudeUm.text)
  return isSignKnown
    ? f.wave(amplitudeUm.text, phaseDeg.text)
    : f.waveEitherWay(amplitudeUm.text, phaseDeg.text)
}
