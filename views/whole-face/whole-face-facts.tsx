import type { FC } from 'hono/jsx'
import { certifiedWholeFace } from '../../src/domain/certified-whole-face.ts'
import { figure } from '../../src/domain/figure.ts'
import type { WholeFace } from '../../src/domain/whole-face.ts'
import { Facts } from '../components/facts.tsx'
import { wholeFacePairs } from '../words/en/whole-face-pairs.ts'
import { words } from '../words/en.ts'
import { howSignText } from './how-sign-text.ts'

/** What else is said of a whole face beside its flatness, and what to look at before it is used. */
export const WholeFaceFacts: FC<{ wholeFace: WholeFace }> = ({ wholeFace }) => {
  const w = words.wholeFace
  const { cautions, seen } = wholeFace
  const places = (seen?.doubtfulDeg ?? []).map((deg) => `${figure(deg, { decimals: 0 }).text}°`)
  const sign = howSignText(wholeFace)
  return (
    <>
      <Facts
        layout="rows"
        pairs={[
          ...wholeFacePairs(certifiedWholeFace(wholeFace)),
          { label: w.figures.diameters, value: diametersText(wholeFace) },
        ]}
      />
      {sign === null ? null : <p class="small">{sign}</p>}
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

function diametersText({ outerDiameterMm, innerDiameterMm }: WholeFace): string {
  const mm = (value: number) => figure(value, { decimals: 2 }).text
  return words.wholeFace.figures.diametersMm(mm(outerDiameterMm), mm(innerDiameterMm))
}
