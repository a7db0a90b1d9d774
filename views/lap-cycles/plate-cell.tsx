import type { FC } from 'hono/jsx'
import type { LapCycle } from '../../src/domain/lap-cycle.ts'
import { numberText } from '../figures/number-text.ts'
import { Cell } from '../order-record.tsx'
import { words } from '../words/en.ts'

/** On what was lapped, and how; what nobody said is left out. */
export const PlateCell: FC<{ cycle: LapCycle }> = ({ cycle }) => {
  const w = words.lapping
  const { abrasive, grit, durationMin, loadKg, plateForm, purpose } = cycle
  const cutting = [
    purpose === 'lap' ? '' : w.purposes[purpose].label,
    abrasive === null ? '' : w.abrasives[abrasive],
    grit,
  ]
  const run = [
    durationMin === null ? '' : w.duration(numberText(durationMin)),
    loadKg === null ? '' : w.load(numberText(loadKg)),
  ]
  const said = (texts: readonly string[]) => texts.filter((one) => one !== '').join(', ')
  return (
    <Cell
      details={[said(cutting), said(run), plateForm === null ? '' : formText(cycle, plateForm)]}
    >
      {cycle.plate}
    </Cell>
  )
}

function formText(
  { plateSagUm, plateDiameterMm }: LapCycle,
  form: NonNullable<LapCycle['plateForm']>,
): string {
  const w = words.lapping
  const over = plateDiameterMm === null ? '' : w.over(numberText(plateDiameterMm))
  const sag = plateSagUm === null ? '' : w.sagOver(numberText(plateSagUm), over)
  return w.plateIs(w.plateForms[form].toLowerCase(), sag)
}
