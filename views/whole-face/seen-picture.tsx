import type { FC } from 'hono/jsx'
import type { FacePhoto } from '../../src/domain/face-photo.ts'
import { figure } from '../../src/domain/figure.ts'
import { unexplainedShare } from '../../src/domain/unexplained-share.ts'
import type { SeenInPhoto, WholeFace } from '../../src/domain/whole-face.ts'
import { residualPicture, residualSteps } from '../../src/plots/residual-map.ts'
import { SvgDrawing } from '../components/svg-drawing.tsx'
import { words } from '../words/en.ts'
import { overPhoto } from './over-photo.ts'

const residualPx = 300

/** What was seen or set, over the photograph, and what the surface leaves open. */
export const SeenPicture: FC<{
  wholeFace: Pick<WholeFace, 'seen' | 'source'>
  photo: Pick<FacePhoto, 'widthPx' | 'heightPx'>
  href: string
}> = ({ wholeFace, photo, href }) => {
  const w = words.wholeFace
  const { seen, source } = wholeFace
  const drawing = overPhoto(photo, wholeFace)
  const hasDoubt = (seen?.doubtfulDeg.length ?? 0) > 0
  const text = [w.seenText[source.kind], ...(hasDoubt ? [w.doubtful] : [])].join(' ')
  return (
    <div class="seen">
      <figure>
        <figcaption class="strong">{w.seenTitle[source.kind]}</figcaption>
        <div class="photo-stage">
          <img
            class="photo-picture"
            src={href}
            width={photo.widthPx}
            height={photo.heightPx}
            loading="lazy"
            alt={text}
          />
          {drawing === null ? null : (
            <div class="photo-over">
              <SvgDrawing drawing={drawing} />
            </div>
          )}
        </div>
        <p class="small soft">{text}</p>
      </figure>
      <Residuals residuals={seen?.residuals ?? null} />
    </div>
  )
}

const Residuals: FC<Pick<SeenInPhoto, 'residuals'>> = ({ residuals }) => {
  if (residuals === null) return null
  const w = words.wholeFace
  const percent = (share: number) => figure(100 * share, { decimals: 0 }).text
  const [least] = residualSteps
  const drawing = residualPicture(residuals, residualPx, {
    from: (share) => w.residualKey.from(percent(share)),
    unseen: w.residualKey.unseen,
  })
  return (
    <figure>
      <figcaption class="strong">{w.residualTitle}</figcaption>
      <SvgDrawing
        drawing={drawing}
        id="residuals"
        title={w.residualAlternative(percent(unexplainedShare(residuals, least)), percent(least))}
      />
      <p class="small soft">{w.residualText}</p>
    </figure>
  )
}
