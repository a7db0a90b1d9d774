import type { Child, FC } from 'hono/jsx'
import type { CertificateRecord } from '../src/domain/certificate.ts'
import type { CertifiedHand } from '../src/domain/certified-strip.ts'
import { VerdictMark } from './components/verdict-mark.tsx'
import { minuteText } from './figures/time-text.ts'
import { AssemblyPicture, SpringPicture } from './strip/spring-picture.tsx'
import { TrackPicture } from './strip/track-picture.tsx'
import { assemblySign } from './words/en/assembly-sign.ts'
import {
  assemblyTexts,
  handTexts,
  type StripTexts,
  springTexts,
  trackTexts,
} from './words/en/strip-texts.ts'
import { words } from './words/en.ts'

type Records = Pick<CertificateRecord, 'wearTracks' | 'springs' | 'assembly'>

/** Whether an order has any of them. */
export function hasStripRecords({ wearTracks, springs, assembly }: Records): boolean {
  return wearTracks !== undefined || springs !== undefined || assembly !== undefined
}

/** Worn tracks, springs and the assembly, in lines that a phone can hold, with their drawings. */
export const StripLines: FC<Records> = ({ wearTracks = [], springs = [], assembly }) => {
  const { stripRecords: w, trade, wearTrack, springCheck } = words
  return (
    <>
      <ul class="result-lines">
        {wearTracks.map((one, index) => (
          <li class="result-line">
            <span class="strong">{`${wearTrack.act}, ${trade.faceKind[one.face].toLowerCase()}`}</span>
            <Told texts={trackTexts(one)} hand={one}>
              <TrackPicture track={one} id={`worn-track-${index + 1}`} />
            </Told>
          </li>
        ))}
        {springs.map((one, index) => (
          <li class="result-line">
            <span class="strong">{`${springCheck.act} ${w.conditions[one.condition]}`}</span>
            <Told texts={springTexts(one)} hand={one}>
              <SpringPicture spring={one} id={`spring-${index + 1}`} />
            </Told>
          </li>
        ))}
        {assembly === undefined ? null : (
          <li class="result-line">
            <span class="strong">{w.assembly}</span>
            <VerdictMark {...assemblySign(assembly)} />
            <Told texts={assemblyTexts(assembly)} hand={assembly}>
              <AssemblyPicture assembly={assembly} id="assembly-line" />
            </Told>
          </li>
        )}
      </ul>
      <p class="small soft">{w.certificate.note}</p>
    </>
  )
}

/** The lines beside the drawing; below each other where there is no room. */
const Told: FC<{ texts: StripTexts; hand: CertifiedHand; children?: Child }> = (props) => {
  const { texts, hand, children } = props
  return (
    <div class="result-line-told strip-told">
      <div class="stack-tight">
        {[...texts.read, ...texts.follows, ...handTexts(hand, minuteText)].map((text) => (
          <p class="small soft">{text}</p>
        ))}
      </div>
      <div>{children}</div>
    </div>
  )
}
