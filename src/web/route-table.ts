import type { Role } from '../domain/role.ts'

/** `signed-in`: every role, each seeing what is theirs. */
export type Access = 'public' | 'signed-in' | readonly Role[]

export type Route = {
  readonly method: 'get' | 'post'
  readonly path: string
  readonly who: Access
  /** The machine interface answers problem details; pages answer pages. */
  readonly surface: 'page' | 'api'
  /** Acts that a bearer token can never do stand on pages only, where no token is read. */
}

const staff = ['technician', 'inspector', 'manager'] as const
const page = (method: 'get' | 'post', path: string, who: Access): Route => ({
  method,
  path,
  who,
  surface: 'page',
})
const api = (method: 'get' | 'post', path: string, who: Access): Route => ({
  method,
  path: `/api/v1${path}`,
  who,
  surface: 'api',
})

/**
 * Every route and who may use it, in one table: nothing is served that does not stand here, and a
 * test walks it with every role, signed out, and with a stranger's record.
 */
export const routes = {
  home: page('get', '/', 'public'),
  showSignIn: page('get', '/sign-in', 'public'),
  signIn: page('post', '/sign-in', 'public'),
  signOut: page('post', '/sign-out', 'signed-in'),
  setView: page('post', '/view', 'public'),
  showAccount: page('get', '/account', 'signed-in'),
  changePassword: page('post', '/account/password', 'signed-in'),

  showBench: page('get', '/bench', staff),
  listWorkOrders: page('get', '/work-orders', staff),
  findWorkOrder: page('get', '/work-orders/find', staff),
  newWorkOrder: page('get', '/work-orders/new', staff),
  createWorkOrder: page('post', '/work-orders', staff),
  showWorkOrder: page('get', '/work-orders/:number', staff),
  explainLimits: page('get', '/work-orders/:number/limits', staff),
  showResult: page('get', '/work-orders/:number/results/:kind/:id', 'signed-in'),
  moveWorkOrder: page('post', '/work-orders/:number/stage', staff),
  stateDecontamination: page('post', '/work-orders/:number/decontamination', staff),
  agreeOrderRule: page('post', '/work-orders/:number/rule', ['inspector', 'manager']),

  showFlatnessGuide: page('get', '/flatness-guide', 'signed-in'),
  newFlatnessReading: page('get', '/work-orders/:number/flatness/new', ['technician']),
  previewFlatness: page('post', '/work-orders/:number/flatness/preview', ['technician']),
  createFlatnessReading: page('post', '/work-orders/:number/flatness', ['technician']),
  newFacePhoto: page('get', '/work-orders/:number/face-photos/new', ['technician']),
  createFacePhoto: page('post', '/work-orders/:number/face-photos', ['technician']),
  showFacePhoto: page('get', '/work-orders/:number/face-photos/:id', ['technician']),
  showFacePicture: page('get', '/work-orders/:number/face-photos/:id/picture', 'signed-in'),
  previewFacePhoto: page('post', '/work-orders/:number/face-photos/:id/preview', ['technician']),
  recordFacePhoto: page('post', '/work-orders/:number/face-photos/:id/reading', ['technician']),
  showWholeFaces: page('get', '/work-orders/:number/whole-faces', 'signed-in'),
  showAlignment: page('get', '/work-orders/:number/alignment', 'signed-in'),
  combineReadings: page('post', '/work-orders/:number/whole-faces', ['technician']),
  newStaticTest: page('get', '/work-orders/:number/static-tests/new', ['technician']),
  previewStaticTest: page('post', '/work-orders/:number/static-tests/preview', ['technician']),
  createStaticTest: page('post', '/work-orders/:number/static-tests', ['technician']),
  newMeasuredValue: page('get', '/work-orders/:number/measured-values/new', ['technician']),
  previewMeasuredValue: page('post', '/work-orders/:number/measured-values/preview', [
    'technician',
  ]),
  createMeasuredValue: page('post', '/work-orders/:number/measured-values', ['technician']),
  showStrip: page('get', '/work-orders/:number/strip', staff),
  newFinding: page('get', '/work-orders/:number/findings/new', ['technician']),
  createFinding: page('post', '/work-orders/:number/findings', ['technician']),
  showFindingPicture: page('get', '/work-orders/:number/findings/:id/picture', 'signed-in'),
  newPartLine: page('get', '/work-orders/:number/part-lines/new', ['technician']),
  createPartLine: page('post', '/work-orders/:number/part-lines', ['technician']),
  liveDynamicRun: page('get', '/work-orders/:number/dynamic-runs/:id/live', staff),
  showDynamicRun: page('get', '/work-orders/:number/dynamic-runs/:id', staff),
  newRunOutSurvey: page('get', '/work-orders/:number/run-out-surveys/new', ['technician']),
  createRunOutSurvey: page('post', '/work-orders/:number/run-out-surveys', ['technician']),
  showRunOutSurvey: page('get', '/work-orders/:number/run-out-surveys/:id', staff),
  addRunOutReading: page('post', '/work-orders/:number/run-out-surveys/:id/readings', [
    'technician',
  ]),
  endRunOutSurvey: page('post', '/work-orders/:number/run-out-surveys/:id/end', ['technician']),
  newLapCycle: page('get', '/work-orders/:number/lap-cycles/new', ['technician']),
  previewLapCycle: page('post', '/work-orders/:number/lap-cycles/preview', ['technician']),
  createLapCycle: page('post', '/work-orders/:number/lap-cycles', ['technician']),
  newWearTrack: page('get', '/work-orders/:number/wear-tracks/new', ['technician']),
  previewWearTrack: page('post', '/work-orders/:number/wear-tracks/preview', ['technician']),
  createWearTrack: page('post', '/work-orders/:number/wear-tracks', ['technician']),
  newSpringCheck: page('get', '/work-orders/:number/spring-checks/new', ['technician']),
  previewSpringCheck: page('post', '/work-orders/:number/spring-checks/preview', ['technician']),
  createSpringCheck: page('post', '/work-orders/:number/spring-checks', ['technician']),
  newAssembly: page('get', '/work-orders/:number/assembly/new', ['technician']),
  previewAssembly: page('post', '/work-orders/:number/assembly/preview', ['technician']),
  createAssembly: page('post', '/work-orders/:number/assembly', ['technician']),
  newUseException: page('get', '/work-orders/:number/exceptions/new', ['technician']),
  createUseException: page('post', '/work-orders/:number/exceptions', ['technician']),
  answerUseException: page('post', '/exceptions/:id/answer', ['inspector']),
  handOver: page('post', '/work-orders/:number/hand-over', ['technician']),

  listInspection: page('get', '/inspection', ['inspector', 'manager']),
  showEvidence: page('get', '/work-orders/:number/inspection', ['inspector', 'manager']),
  createConcession: page('post', '/work-orders/:number/concessions', ['inspector']),
  decide: page('post', '/work-orders/:number/decision', ['inspector']),

  listCertificates: page('get', '/certificates', 'signed-in'),
  showCertificate: page('get', '/certificates/:number', 'signed-in'),
  downloadCertificate: page('get', '/certificates/:number/document.pdf', 'signed-in'),
  listMySeals: page('get', '/my-seals', ['customer']),
  showSeal: page('get', '/seals/:id', 'signed-in'),
  startVerify: page('get', '/verify', 'public'),
  verify: page('get', '/verify/:number', 'public'),

  showCalculator: page('get', '/calculator', 'signed-in'),
  showConformity: page('get', '/calculator/conformity', 'signed-in'),
  showUncertainty: page('get', '/calculator/uncertainty', 'signed-in'),

  listCustomers: page('get', '/customers', staff),
  createCustomer: page('post', '/customers', ['manager']),
  showCustomer: page('get', '/customers/:id', staff),
  agreeCustomerRule: page('post', '/customers/:id/rule', ['inspector', 'manager']),
  createEquipment: page('post', '/customers/:id/equipment', staff),
  newSeal: page('get', '/customers/:id/seals/new', staff),
  createSeal: page('post', '/customers/:id/seals', staff),

  listInstruments: page('get', '/instruments', staff),
  createInstrument: page('post', '/instruments', ['inspector', 'manager']),
  showInstrument: page('get', '/instruments/:id', staff),
  addCalibration: page('post', '/instruments/:id/calibrations', ['inspector', 'manager']),
  withdrawInstrument: page('post', '/instruments/:id/withdrawal', ['inspector', 'manager']),
  amendInstrument: page('post', '/instruments/:id/numbers', ['inspector', 'manager']),
  setInstrumentHolder: page('post', '/instruments/:id/holder', staff),
  addInstrumentFile: page('post', '/instruments/:id/files', staff),
  showInstrumentFile: page('get', '/instruments/:id/files/:fileId', staff),
  showTouched: page('get', '/instruments/:id/touched', staff),
  answerDoubt: page('post', '/instruments/:id/touched', ['inspector']),
  listLimitSets: page('get', '/limit-sets', staff),
  compareLimitSets: page('get', '/limit-sets/compare', staff),
  newLimitSet: page('get', '/limit-sets/new', ['inspector', 'manager']),
  createLimitSet: page('post', '/limit-sets', ['inspector', 'manager']),
  showLimitSet: page('get', '/limit-sets/:id', staff),
  approveLimitSet: page('post', '/limit-sets/:id/approval', ['inspector']),
  retireLimitSet: page('post', '/limit-sets/:id/retirement', ['inspector']),
  newLimitSetVersion: page('get', '/limit-sets/:id/next', ['inspector', 'manager']),
  createLimitSetVersion: page('post', '/limit-sets/:id/next', ['inspector', 'manager']),
  listPeople: page('get', '/people', ['manager']),
  createPerson: page('post', '/people', ['manager']),
  setPersonActive: page('post', '/people/:id/active', ['manager']),
  showAudit: page('get', '/audit', ['inspector', 'manager']),

  apiDescription: api('get', '/openapi.json', 'public'),
  apiCountedFlatness: api('post', '/calculate/flatness/counted', 'signed-in'),
  apiMarkedFlatness: api('post', '/calculate/flatness/marked', 'signed-in'),
  apiPhotoFlatness: api('post', '/calculate/flatness/photo', 'signed-in'),
  apiPressureChange: api('post', '/calculate/leak/pressure-change', 'signed-in'),
  apiCollected: api('post', '/calculate/leak/collected', 'signed-in'),
  apiLeakConvert: api('post', '/calculate/leak/convert', 'signed-in'),
  apiStoredEnergy: api('post', '/calculate/stored-energy', 'signed-in'),
  apiRunOut: api('post', '/calculate/run-out', 'signed-in'),
  apiStraightness: api('post', '/calculate/straightness', 'signed-in'),
  apiSpring: api('post', '/calculate/spring', 'signed-in'),
  apiConformity: api('post', '/calculate/conformity', 'signed-in'),
  apiUncertainty: api('post', '/calculate/uncertainty', 'signed-in'),
  apiCreateCustomer: api('post', '/customers', ['technician', 'inspector', 'manager']),
  apiCreateWorkOrder: api('post', '/work-orders', staff),
  apiListWorkOrders: api('get', '/work-orders', 'signed-in'),
  apiShowWorkOrder: api('get', '/work-orders/:number', 'signed-in'),
  apiCreateFlatnessReading: api('post', '/work-orders/:number/flatness-readings', ['technician']),
  apiCreateDynamicRun: api('post', '/work-orders/:number/dynamic-runs', ['technician']),
  apiAddRunSamples: api('post', '/dynamic-runs/:id/samples', ['technician']),
  apiCreateStaticTest: api('post', '/work-orders/:number/static-tests', ['technician']),
  apiCreateMeasuredValue: api('post', '/work-orders/:number/measured-values', ['technician']),
  apiCreateFinding: api('post', '/work-orders/:number/findings', ['technician']),
  apiCreatePartLine: api('post', '/work-orders/:number/part-lines', ['technician']),
  apiCreateRunOutSurvey: api('post', '/work-orders/:number/run-out-surveys', ['technician']),
  apiCreateLapCycle: api('post', '/work-orders/:number/lap-cycles', ['technician']),
  apiCreateWearTrack: api('post', '/work-orders/:number/wear-tracks', ['technician']),
  apiCreateSpringCheck: api('post', '/work-orders/:number/spring-checks', ['technician']),
  apiCreateAssembly: api('post', '/work-orders/:number/assemblies', ['technician']),
  apiHandOver: api('post', '/work-orders/:number/hand-over', ['technician']),
  apiDownloadCertificate: api('get', '/certificates/:file{.+\\.pdf}', 'signed-in'),
  apiShowCertificate: api('get', '/certificates/:number', 'signed-in'),
  apiVerify: api('get', '/verify/:number', 'public'),
} as const satisfies Record<string, Route>

export type RouteName = keyof typeof routes
