import type { FC } from 'hono/jsx'
import { confirmField } from '../../src/domain/confirmed.ts'
import { abrasives, lapPurposes, plateForms } from '../../src/domain/lap-cycle.ts'
import type { FaceKind } from '../../src/domain/seal.ts'
import { ChoiceCards } from '../components/choice-cards.tsx'
import { Field } from '../components/field.tsx'
import { SelectField } from '../components/select-field.tsx'
import { ConfirmBeyond } from '../confirm-beyond.tsx'
import { Question } from '../recording/question.tsx'
import { tradeWord } from '../words/en/trade.ts'
import { words } from '../words/en.ts'
import { LapFigureField, type LapTyped, lapFieldProps } from './fields.tsx'

export type LapFace = { readonly id: number; readonly kind: FaceKind; readonly material: string }

/** Face, plate and height: few fields and large ones, for wet hands. */
export const LapQuestions: FC<{
  faces: readonly LapFace[]
  /** The plates in use, as they were called last. */
  plates: readonly string[]
  typed: LapTyped
}> = ({ faces, plates, typed }) => {
  const { lapping: w, trade } = words
  return (
    <>
      <Question number={1} title={w.face}>
        <ChoiceCards
          {...lapFieldProps(typed, 'componentId')}
          legend={w.face}
          isLegendHidden
          choices={faces.map((one) => ({
            value: String(one.id),
            label: trade.faceKind[one.kind],
            detail: tradeWord(trade.faceMaterial, one.material),
          }))}
        />
        <ChoiceCards
          {...lapFieldProps(typed, 'purpose')}
          legend={w.purpose}
          choices={lapPurposes.map((value) => ({ value, ...w.purposes[value] }))}
        />
      </Question>
      <Question number={2} title={w.plateQuestion}>
        <PlateFields plates={plates} typed={typed} />
      </Question>
      <Question number={3} title={w.heightQuestion}>
        <p class="field-hint">{w.emptyHint}</p>
        <div class="field-pair">
          <LapFigureField typed={typed} name="heightBeforeMm" />
          <LapFigureField typed={typed} name="heightAfterMm" />
        </div>
        <div class="field-pair">
          <LapFigureField typed={typed} name="plannedStockUm" />
          <LapFigureField typed={typed} name="stockUm" />
        </div>
        <ConfirmBeyond faults={typed.faults} typed={typed.values[confirmField]} />
      </Question>
    </>
  )
}

/** The plates used last as cards; another one is typed, and counts over the card. */
const PlateFields: FC<{ plates: readonly string[]; typed: LapTyped }> = ({ plates, typed }) => {
  const w = words.lapping
  const { error, ...plate } = lapFieldProps(typed, 'plate')
  const isFirst = plates.length === 0
  return (
    <>
      {isFirst ? null : (
        <ChoiceCards
          {...plate}
          error={error}
          legend={w.plate}
          isLegendHidden
          choices={plates.map((value) => ({ value, label: value }))}
        />
      )}
      <Field
        name="otherPlate"
        label={isFirst ? w.plate : w.otherPlate}
        hint={w.plateHint}
        value={typed.values.otherPlate}
        error={isFirst ? error : undefined}
      />
      <ChoiceCards
        {...lapFieldProps(typed, 'plateForm')}
        legend={w.plateForm}
        hint={w.plateFormHint}
        choices={[
          ...plateForms.map((value) => ({ value, label: w.plateForms[value] })),
          { value: '', label: w.notLooked },
        ]}
      />
      <div class="field-pair">
        <SelectField
          {...lapFieldProps(typed, 'abrasive')}
          label={w.abrasive}
          emptyLabel={w.notSaid}
          options={abrasives.map((value) => ({ value, label: w.abrasives[value] }))}
        />
        <Field {...lapFieldProps(typed, 'grit')} label={w.grit} hint={w.gritHint} width="short" />
      </div>
    </>
  )
}
