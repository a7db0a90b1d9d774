import type { SurveyRecord, SurveySpot } from '../../src/domain/dial-survey.ts'
import type { Fault } from '../../src/domain/fault.ts'
import type { SurveyProgress } from '../../src/domain/survey-progress.ts'
import type { SurveyResult } from '../../src/domain/survey-result.ts'

/** One step of the indicator, to be tapped. */
export type Graduation = {
  /** In the unit of the survey. */
  readonly step: number
  readonly text: string
}

export type SurveyPageProps = {
  readonly orderNumber: string
  readonly sealSerial: string
  readonly survey: SurveyRecord
  /** Who looks at it, and would read it. */
  readonly reader: { readonly id: number; readonly name: string }
  readonly progress: SurveyProgress
  /** A technician, while survey and order are open. */
  readonly canRead: boolean
  /** The spot that the form asks for; null where nothing can be read any more. */
  readonly asked: SurveySpot | null
  readonly typed: string
  readonly faults: readonly Fault[]
  readonly giveUpReason: string
  readonly formKey: string
  /** Null where the indicator's record says no step. */
  readonly graduation: Graduation | null
  /** Of what has been read so far; null while that says nothing. */
  readonly result: SurveyResult | null
  /** Total movement allowed; null: not limited, or its size is not known. */
  readonly limitUm: number | null
  /** What stands against its indicators today; empty where they may be used. */
  readonly instrumentStops: readonly {
    readonly fault: Fault
    readonly id: number
    readonly number: string
  }[]
}
