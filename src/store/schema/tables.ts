/** Every table, for the query builder and for the test that holds them against the migrations. */

import { agreedRule } from './agreed-rule.ts'
import { apiToken } from './api-token.ts'
import { assembly } from './assembly.ts'
import { audit } from './audit.ts'
import { calibration } from './calibration.ts'
import { certificate } from './certificate.ts'
import { component } from './component.ts'
import { concession } from './concession.ts'
import { counter } from './counter.ts'
import { customer } from './customer.ts'
import { decision } from './decision.ts'
import { dialSurvey } from './dial-survey.ts'
import { dialSurveyEnd } from './dial-survey-end.ts'
import { dialSurveyReading } from './dial-survey-reading.ts'
import { doubtAnswer } from './doubt-answer.ts'
import { dynamicRun } from './dynamic-run.ts'
import { dynamicRunBatch } from './dynamic-run-batch.ts'
import { equipment } from './equipment.ts'
import { facePhoto } from './face-photo.ts'
import { finding } from './finding.ts'
import { flatnessDirection } from './flatness-direction.ts'
import { flatnessReading } from './flatness-reading.ts'
import { handOver } from './hand-over.ts'
import { instrument } from './instrument.ts'
import { instrumentAmendment } from './instrument-amendment.ts'
import { instrumentFile } from './instrument-file.ts'
import { instrumentHolder } from './instrument-holder.ts'
import { keptAnswer } from './kept-answer.ts'
import { lapCycle } from './lap-cycle.ts'
import { limitSet } from './limit-set.ts'
import { limitSetStep } from './limit-set-step.ts'
import { limitValue } from './limit-value.ts'
import { measuredValue } from './measured-value.ts'
import { partLine } from './part-line.ts'
import { seal } from './seal.ts'
import { session } from './session.ts'
import { signInFailure } from './sign-in-failure.ts'
import { springCheck } from './spring-check.ts'
import { stageChange } from './stage-change.ts'
import { staticTest } from './static-test.ts'
import { storedFile } from './stored-file.ts'
import { useException } from './use-exception.ts'
import { useExceptionAnswer } from './use-exception-answer.ts'
import { user } from './user.ts'
import { wearTrack } from './wear-track.ts'
import { wholeFace } from './whole-face.ts'
import { workOrder } from './work-order.ts'

export const tables = {
  customer,
  user,
  session,
  apiToken,
  signInFailure,
  keptAnswer,
  equipment,
  seal,
  component,
  limitSet,
  limitValue,
  instrument,
  calibration,
  counter,
  workOrder,
  stageChange,
  flatnessReading,
  flatnessDirection,
  staticTest,
  handOver,
  decision,
  storedFile,
  certificate,
  limitSetStep,
  instrumentHolder,
  instrumentAmendment,
  instrumentFile,
  useException,
  useExceptionAnswer,
  doubtAnswer,
  agreedRule,
  concession,
  measuredValue,
  lapCycle,
  finding,
  partLine,
  dialSurvey,
  dialSurveyReading,
  dialSurveyEnd,
  facePhoto,
  wholeFace,
  wearTrack,
  springCheck,
  assembly,
  dynamicRun,
  dynamicRunBatch,
  audit,
} as const
