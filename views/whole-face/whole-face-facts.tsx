import type { FC } from 'hono/jsx'
import type { WholeFace } from '../../src/domain/whole-face.ts'
import { formatFixed } from '../../src/science/rounding/format-fixed.ts'
import { Facts } from '../components/facts.tsx'
import { numberText } from '../figures/number-text.ts'
import { heightText } from '../words/en/whole-face-texts.ts'
import { words } from '../words/en.ts'

/** What else is said of a whole face beside its flatness, and what to look at before it is used. */
export const WholeFaceFacts: FC<{ wholeFace: WholeFace }> = ({ wholeFace }) => {
  const w = words.wholeFace
  const { cautions, seen } = wholeFace
  const places = (seen?.doubtfulDeg ?? []).map((deg) => `${numberText(Math.round(deg))}°`)
  return (
    <>
      <Facts layout="rows" pairs={wholeFacePairs(wholeFace)} />
      {cautions.map((caution) => (
        <p class="notice notice-note">
          {w.caution[caution]}
          {caution === 'local-defect-or-step' && places.length > 0
            ? ` ${w.cautionAt(places.join(', '))}`
            : ''}
        </p>
      ))}
    </>
  )
}

/** Label and value of each further figure that there is. */
export function wholeFacePairs(wholeFace: WholeFace): { label: string; value: string }[] {
  const { figures: f } = words.wholeFace
  const { minimumZoneUm, rmsUm, lobes, quality, surface } = wholeFace
  const um = (value: number) => `${heightText(value)} µm`
  const diameters = [wholeFace.outerDiameterMm, wholeFace.innerDiameterMm].map((one) =>
    formatFixed({ value: one, decimals: 2 }),
  ) as [string, string]
  return [
    ...(minimumZoneUm === null ? [] : [{ label: f.minimumZone, value: um(minimumZoneUm) }]),
    ...(rmsUm === null ? [] : [{ label: f.rms, value: um(rmsUm) }]),
    ...(surface === null ? [] : [{ label: f.taper, value: taperText(wholeFace) }]),
    ...lobes.map(({ order, amplitudeUm, phaseDeg }) => ({
      label: f.lobe(order),
      value: f.wave(heightText(amplitudeUm), numberText(Math.round(phaseDeg))),
    })),
    ...(quality === null
      ? []
      : [
          {
            label: f.quality,
            value: f.percent(formatFixed({ value: 100 * quality, decimals: 0 })),
          },
        ]),
    { label: f.diameters, value: f.diametersMm(...diameters) },
  ]
}

function taperText({ taperUm }: WholeFace): string {
  return taperUm === null ? words.wholeFace.notDetermined : `${heightText(taperUm)} µm`
}
