import {
  type LapFormName,
  type LapFormValues,
  lapFormNames,
} from '../../../views/lap-cycles/form-values.ts'
import type { Input } from '../../domain/fields.ts'
import { type LapCycle, lapFigureNames } from '../../domain/lap-cycle.ts'
import type { AppContext } from '../context.ts'
import { typedText } from '../typed-text.ts'
import { viewer } from '../viewer.ts'
import type { LapDesk } from './desk.ts'

const offeredPlateCount = 5

/** The plates used last, by anyone: as many as cards can be. */
export function offeredPlates({ lastLaps }: LapDesk): readonly string[] {
  return [...new Set(lastLaps.map((one) => one.plate))].slice(0, offeredPlateCount)
}

/**
 * A fresh form: plate, abrasive and grit are those of this person's last cycle. Nothing that was
 * read or looked at is filled in.
 */
export function freshLapValues(c: AppContext, desk: LapDesk): LapFormValues {
  const last = desk.lastLaps.find((one) => one.recordedById === viewer(c).id)
  const onlyFace = desk.faces.length === 1 ? desk.faces[0] : undefined
  const face = desk.faces.find((one) => String(one.id) === c.req.query('face')) ?? onlyFace
  return {
    ...valuesBy(() => ''),
    componentId: face === undefined ? '' : String(face.id),
    purpose: 'lap',
    ...plateValues(last?.plate ?? '', desk),
    abrasive: last?.abrasive ?? '',
    grit: last?.grit ?? '',
  }
}

/** The form filled with what an earlier record says, to be corrected. */
export function lapValuesOfRecord(cycle: LapCycle, desk: LapDesk): LapFormValues {
  const figures = lapFigureNames.map((name) => {
    const value = cycle[name]
    return [name, cycle.typed[name] ?? (value === null ? '' : String(value))] as const
  })
  return {
    ...valuesBy(() => ''),
    ...(Object.fromEntries(figures) as Record<(typeof lapFigureNames)[number], string>),
    componentId: String(cycle.componentId),
    purpose: cycle.purpose,
    ...plateValues(cycle.plate, desk),
    plateForm: cycle.plateForm ?? '',
    abrasive: cycle.abrasive ?? '',
    grit: cycle.grit,
    isNewRing: cycle.isNewRing ? 'yes' : '',
    note: cycle.note,
  }
}

/** What was typed, to be shown again. */
export function lapValuesOfInput(input: Input): LapFormValues {
  return valuesBy((name) => typedText(input[name]))
}

/** On a card where there is one for it, else as text. */
function plateValues(plate: string, desk: LapDesk): Pick<LapFormValues, 'plate' | 'otherPlate'> {
  const isOffered = offeredPlates(desk).includes(plate)
  return isOffered ? { plate, otherPlate: '' } : { plate: '', otherPlate: plate }
}

function valuesBy(textOf: (name: LapFormName) => string): LapFormValues {
  const pairs = lapFormNames.map((name) => [name, textOf(name)] as const)
  return Object.fromEntries(pairs) as Record<LapFormName, string>
}
