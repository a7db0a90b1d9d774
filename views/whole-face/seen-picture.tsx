import type { FC } from 'hono/jsx'
import type { FacePhoto } from '../../src/domain/face-photo.ts'
import type { WholeFace } from '../../src/domain/whole-face.ts'
import { residualPicture, residualSteps } from '../../src/plots/residual-map.ts'
import { SvgDrawing } from '../components/svg-drawing.tsx'
import { seenDrawing } from '../face-photo/overlay-of.ts'
import { words } from '../words/en.ts'

const residualPx = 300

/** What the program saw: band centres over the photograph, and what the surface leaves open. */
export const SeenPicture: FC<{
  wholeFace: WholeFace
  photo: Pick<FacePhoto, 'widthPx' | 'heightPx'>
  href: string
}> = ({ wholeFace, photo, href }) => {
  const w = words.wholeFace
  const drawing = seenDrawing(photo, wholeFace, false)
  const residuals = wholeFace.seen?.residuals ?? null
  const percent = residualSteps.map((one) => String(100 * one)) as [string, string, string]
  return (
    <div class="seen">
      <figure>
        <figcaption class="strong">{w.seenTitle}</figcaption>
        <div class="photo-stage">
          <img
            class="photo-picture"
            src={href}
            width={photo.widthPx}
            height={photo.heightPx}
            loading="lazy"
            alt={w.seenText}
          />
          {drawing === null ? null : (
            <div class="photo-over">
              <SvgDrawing drawing={drawing} />
            </div>
          )}
        </div>
        <p class="small soft">{w.seenText}</p>
      </figure>
      {residuals === null ? null : (
        <figure>
          <figcaption class="strong">{w.residualTitle}</figcaption>
          <SvgDrawing
            drawing={residualPicture(residuals, residualPx)}
            id="residuals"
            title={w.residualTitle}
          />
          <p class="small soft">{w.residualText(...percent)}</p>
        </figure>
      )}
    </div>
  )
}
