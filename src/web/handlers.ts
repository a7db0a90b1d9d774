import * as alignment from './alignment/show-alignment.tsx'
import * as api from './api/handlers.ts'
import * as bench from './bench/handlers.tsx'
import * as calculator from './calculator/handlers.tsx'
import * as certificates from './certificates/handlers.tsx'
import type { Handler } from './context.ts'
import * as customers from './customers/handlers.tsx'
import * as liveRuns from './dynamic-runs/live-run.ts'
import * as dynamicRuns from './dynamic-runs/show-run.tsx'
import * as exceptions from './exceptions/handlers.ts'
import * as facePhotos from './face-photos/handlers.tsx'
import * as facePhotoUpload from './face-photos/upload.tsx'
import * as findings from './findings/handlers.tsx'
import * as partLines from './findings/part-lines.tsx'
import * as flatnessGuide from './flatness/guide.tsx'
import * as flatness from './flatness/handlers.tsx'
import * as inspection from './inspection/handlers.tsx'
import * as instrumentFiles from './instruments/files.ts'
import * as instruments from './instruments/handlers.tsx'
import * as touched from './instruments/touched.tsx'
import * as lapCycles from './lap-cycles/handlers.tsx'
import * as limitComparison from './limit-sets/compare.tsx'
import * as limitReasons from './limit-sets/explain.tsx'
import * as limitSets from './limit-sets/handlers.tsx'
import * as limitSteps from './limit-sets/steps.ts'
import * as measuredValues from './measured-values/handlers.tsx'
import * as mySeals from './my-seals/handlers.tsx'
import * as people from './people/handlers.tsx'
import * as results from './results/handlers.tsx'
import type { RouteName } from './route-table.ts'
import * as runOutSurveys from './run-out-surveys/handlers.ts'
import * as signIn from './sign-in/handlers.tsx'
import * as staticTests from './static-tests/handlers.tsx'
import * as assemblies from './strip/assemblies.tsx'
import * as springChecks from './strip/spring-checks.tsx'
import * as wearTracks from './strip/wear-tracks.tsx'
import * as wholeFaces from './whole-faces/handlers.ts'
import * as workOrders from './work-orders/handlers.tsx'

/** The handler of every route, by its name in the table; a missing one does not compile. */
export const handlers: Readonly<Record<RouteName, Handler>> = {
  ...signIn,
  ...bench,
  ...workOrders,
  ...flatness,
  ...flatnessGuide,
  ...facePhotos,
  ...facePhotoUpload,
  ...wholeFaces,
  ...alignment,
  ...dynamicRuns,
  ...liveRuns,
  ...staticTests,
  ...measuredValues,
  ...lapCycles,
  ...wearTracks,
  ...springChecks,
  ...assemblies,
  ...runOutSurveys,
  ...findings,
  ...partLines,
  ...exceptions,
  ...inspection,
  ...certificates,
  ...mySeals,
  ...results,
  ...calculator,
  ...customers,
  ...instruments,
  ...instrumentFiles,
  ...touched,
  ...limitSets,
  ...limitSteps,
  ...limitComparison,
  ...limitReasons,
  ...people,
  ...api,
}
