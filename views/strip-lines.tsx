import type { FC } from 'hono/jsx'
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
            <Details texts={trackTexts(one)} hand={one} />
            <div class="result-line-told">
              <TrackPicture track={one} id={`worn-track-${index + 1}`} />
            </div>
          </li>
        ))}
        {springs.map((one, index) => (
          <li class="result-line">
            <span class="strong">{`${springCheck.act} ${w.conditions[one.condition]}`}</span>
            <Details texts={springTexts(one)} hand={one} />
            <div class="result-line-told">
              <SpringPicture spring={one} id={`spring-${index + 1}`} />
            </div>
          </li>
        ))}
        {assembly === undefined ? null : (
          <li class="result-line">
            <span class="strong">{w.assembly}</span>
            <VerdictMark {...assemblySign(assembly)} />
            <Details texts={assemblyTexts(assembly)} hand={assembly} />
            <div class="result-line-told">
              <AssemblyPicture assembly={assembly} id="assembly-line" />
            </div>
          </li>
        )}
      </ul>
      <p class="small soft">{w.certificate.note}</p>
    </>
  )
}

const Details: FC<{ texts: StripTexts; hand: CertifiedHand }> = ({ texts, hand }) => (
  <>
    {[...texts.read, ...texts.follows, ...handTexts(hand, minuteText)].map((text) => (
      <span class="result-line-detail">{text}</span>
    ))}
  </>
)
