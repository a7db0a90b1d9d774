import type { FC } from 'hono/jsx'
import type { AlignedPlace, Alignment } from '../../src/domain/alignment.ts'
import { alignmentPicture } from '../../src/plots/alignment-picture.ts'
import { SvgDrawing } from '../components/svg-drawing.tsx'
import { alignmentTexts, moveText } from '../words/en/alignment-texts.ts'
import { words } from '../words/en.ts'

const widthPx = 340

/** Shaft, register and faces in one picture; nothing where none has a direction. */
export const PictureSection: FC<{ alignment: Alignment }> = ({ alignment }) => {
  const w = words.alignment
  const { shaft, sleeve, register, chamberFace, seatFace, moves } = alignment
  const places = [shaft, sleeve, register, chamberFace, seatFace]
  if (places.every((one) => one === null)) return null
  const offset = (one: AlignedPlace | null) =>
    one && { offsetUm: one.amountUm, directionDeg: one.clockDeg }
  const tilt = (one: AlignedPlace | null) =>
    one && { heightUm: one.amountUm, highDeg: one.clockDeg }
  const drawing = alignmentPicture({
    widthPx,
    shaft: offset(shaft),
    sleeve: offset(sleeve),
    register: offset(register),
    chamberFace: tilt(chamberFace),
    seatFace: tilt(seatFace),
    texts: alignmentTexts(alignment),
  })
  return (
    <section class="card alignment-picture">
      <h2>{w.pictureTitle}</h2>
      <figure>
        <SvgDrawing drawing={drawing} id="alignment" title={moves.map(moveText).join(' ')} />
      </figure>
      <p class="small soft">{w.pictureNote}</p>
    </section>
  )
}
