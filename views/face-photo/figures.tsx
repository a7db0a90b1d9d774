import type { FC } from 'hono/jsx'
import type { WholeFaceAnswer } from '../../src/domain/whole-face-answer.ts'
import { formatFixed } from '../../src/science/rounding/format-fixed.ts'
import { Facts } from '../components/facts.tsx'
import { ResultFigure } from '../components/result-figure.tsx'
import { limitText } from '../figures/limit-text.ts'
import { secondResultText } from '../figures/result-text.ts'
import { uncertainParts } from '../figures/uncertain-text.ts'
import { JudgedBar } from '../recording/judged-bar.tsx'
import { uncertaintyPairs } from '../recording/uncertainty-pairs.ts'
import { WholeFaceFacts } from '../whole-face/whole-face-facts.tsx'
import { WholeFaceFigure } from '../whole-face/whole-face-figure.tsx'
import { tradeWord } from '../words/en/trade.ts'
import { words } from '../words/en.ts'
import { DirectionQuestion } from './direction-question.tsx'
import type { FacePhotoForm } from './page-props.ts'

type Shown = Extract<WholeFaceAnswer['outcome'], { kind: 'figures' }>

/** The figure of the whole face, its verdict, its map, and what the picture cannot know. */
export const FacePhotoFigures: FC<{ form: FacePhotoForm; shown: Shown }> = ({ form, shown }) => {
  const { facePhoto: w, trade } = words
  const { computed, wholeFace, judged, press } = shown
  const flatnessUm = computed.flatnessUm ?? 0
  const value = uncertainParts('flatness', flatnessUm, computed.uncertainty)
  const { limit } = judged
  return (
    <>
      <ResultFigure
        label={w.answerTitle}
        value={value.value}
        doubt={value.doubt}
        unit={value.unit}
        second={secondResultText('flatness', flatnessUm)}
        limit={limit === null ? undefined : `${words.recording.limit} ${limitText(limit)}`}
        verdict={judged.verdict}
        word={trade.verdict[judged.verdict]}
      />
      {press === null ? null : <Press press={press} />}
      <DirectionQuestion form={form} wholeFace={wholeFace} press={press} />
      <WholeFaceFigure wholeFace={wholeFace} id="face" />
      <div class="stack">
        <JudgedBar judged={judged} uncertainty={computed.uncertainty} />
        <WholeFaceFacts wholeFace={wholeFace} />
        <Facts
          layout="rows"
          pairs={[
            { label: words.flatness.form, value: tradeWord(trade.form, computed.form) },
            {
              label: words.flatness.lampUsed,
              value: words.flatness.bandsOf(
                formatFixed({ value: computed.bands ?? 0, decimals: 2 }),
                formatFixed({ value: computed.bandHeightUm, decimals: 4 }),
              ),
            },
            ...uncertaintyPairs(computed.uncertainty),
          ]}
        />
        <p class="small soft">{words.wholeFace.reference}</p>
      </div>
    </>
  )
}

const Press: FC<{ press: NonNullable<Shown['press']> }> = ({ press }) => {
  const w = words.facePhoto
  const bands = formatFixed({ value: press.movedBands, decimals: 2 })
  return (
    <p class="notice notice-note">{press.isDecided ? w.pressDecided(bands) : w.pressOpen(bands)}</p>
  )
}
