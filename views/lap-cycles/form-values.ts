import { confirmField } from '../../src/domain/confirmed.ts'
import { lapFigureNames } from '../../src/domain/lap-cycle.ts'

/** The names of the form's fields; `otherPlate` is the page's own, typed over the choice. */
export const lapFormNames = [
  confirmField,
  'componentId',
  'purpose',
  'plate',
  'otherPlate',
  'plateForm',
  'abrasive',
  'grit',
  ...lapFigureNames,
  'isNewRing',
  'note',
  'reason',
] as const
export type LapFormName = (typeof lapFormNames)[number]

/** The form as typed: every value a text, '' where nothing was entered. */
export type LapFormValues = Readonly<Record<LapFormName, string>>
