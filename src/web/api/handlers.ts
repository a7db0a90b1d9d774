/** The handlers of the machine interface, by their names in the route table. */
export { apiConformity } from './calculate-conformity.ts'
export { apiUncertainty } from './calculate-uncertainty.ts'
export {
  apiCountedFlatness,
  apiRunOut,
  apiSpring,
  apiStraightness,
} from './calculators.ts'
export { apiDownloadCertificate, apiShowCertificate, apiVerify } from './certificates.ts'
export { apiCreateCustomer } from './customers.ts'
export { apiDescription } from './description.ts'
export { apiAddRunSamples, apiCreateDynamicRun } from './dynamic-runs.ts'
export { apiCreateFinding, apiCreatePartLine } from './findings.ts'
export { apiCreateLapCycle } from './lap-cycles.ts'
export {
  apiCollected,
  apiLeakConvert,
  apiPressureChange,
  apiStoredEnergy,
} from './leak-calculators.ts'
export { apiMarkedFlatness } from './marked-flatness.ts'
export { apiCreateMeasuredValue } from './measured-values.ts'
export { apiPhotoFlatness } from './photo-flatness.ts'
export { apiCreateFlatnessReading, apiCreateStaticTest, apiHandOver } from './records.ts'
export { apiCreateRunOutSurvey } from './run-out-surveys.ts'
export { apiCreateAssembly, apiCreateSpringCheck, apiCreateWearTrack } from './strip-records.ts'
export { apiCreateWorkOrder, apiListWorkOrders, apiShowWorkOrder } from './work-orders.ts'
