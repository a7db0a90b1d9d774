import type { FC } from 'hono/jsx'
import { ChoiceCards } from '../components/choice-cards.tsx'
import { limitText } from '../figures/limit-text.ts'
import { tradeWord } from '../words/en/trade.ts'
import { words } from '../words/en.ts'
import type { FaceChoice } from './face-choice.ts'
import { Question } from './question.tsx'

/** Which face lies under the optical flat. */
export const FaceQuestion: FC<{
  number: number
  faces: readonly FaceChoice[]
  value: string
  error?: string
}> = ({ number, faces, ...answer }) => {
  const { flatness: w, trade } = words
  return (
    <Question number={number} title={w.face}>
      <ChoiceCards
        name="faceId"
        legend={w.face}
        isLegendHidden
        choices={faces.map((face) => ({
          value: String(face.id),
          label: trade.faceKind[face.kind],
          detail: detailOf(face),
        }))}
        {...answer}
      />
    </Question>
  )
}

function detailOf({ material, limit }: FaceChoice): string {
  const name = tradeWord(words.trade.faceMaterial, material)
  return limit === null
    ? name
    : `${name} · ${words.recording.limit.toLowerCase()} ${limitText(limit)}`
}
