import { agreedRulesWords } from './en/agreed-rules.ts'
import { alignmentWords } from './en/alignment.ts'
import { assemblyWords } from './en/assembly.ts'
import { benchWords } from './en/bench.ts'
import { calculatorWords } from './en/calculator.ts'
import { certificatesWords } from './en/certificates.ts'
import { chromeWords } from './en/chrome.ts'
import { conformityWords } from './en/conformity.ts'
import { customersWords } from './en/customers.ts'
import { decisionWords } from './en/decision.ts'
import { dynamicRunsWords } from './en/dynamic-runs.ts'
import { exceptionsWords } from './en/exceptions.ts'
import { facePhotoWords } from './en/face-photo.ts'
import { findingsWords } from './en/findings.ts'
import { finishWords } from './en/finish.ts'
import { flatnessWords } from './en/flatness.ts'
import { flatnessGuideWords } from './en/flatness-guide.ts'
import { flatnessSeesWords } from './en/flatness-sees.ts'
import { inspectionWords } from './en/inspection.ts'
import { instrumentsWords } from './en/instruments.ts'
import { lappingWords } from './en/lapping.ts'
import { leakWords } from './en/leak.ts'
import { limitFormsWords } from './en/limit-forms.ts'
import { limitReasonsWords } from './en/limit-reasons.ts'
import { limitSetsWords } from './en/limit-sets.ts'
import { measuredValuesWords } from './en/measured-values.ts'
import { mySealsWords } from './en/my-seals.ts'
import { peopleWords } from './en/people.ts'
import { readersWords } from './en/readers.ts'
import { recordingWords } from './en/recording.ts'
import { resultsWords } from './en/results.ts'
import { signInWords } from './en/sign-in.ts'
import { staticTestsWords } from './en/static-tests.ts'
import { springCheckWords, stripRecordsWords, wearTrackWords } from './en/strip-records.ts'
import { surveyFiguresWords } from './en/survey-figures.ts'
import { surveysWords } from './en/surveys.ts'
import { touchedWords } from './en/touched.ts'
import { tradeWords } from './en/trade.ts'
import { uncertaintyWords } from './en/uncertainty.ts'
import { wholeFaceWords } from './en/whole-face.ts'
import { wholeFacesWords } from './en/whole-faces.ts'
import { workOrdersWords } from './en/work-orders.ts'

/** Every word that a user reads, by place. Whole sentences for faults and refusals stand beside. */
export const words = {
  agreedRules: agreedRulesWords,
  alignment: alignmentWords,
  calculator: calculatorWords,
  conformity: conformityWords,
  uncertainty: uncertaintyWords,
  decision: decisionWords,
  dynamicRuns: dynamicRunsWords,
  chrome: chromeWords,
  signIn: signInWords,
  bench: benchWords,
  customers: customersWords,
  exceptions: exceptionsWords,
  facePhoto: facePhotoWords,
  findings: findingsWords,
  finish: finishWords,
  flatness: flatnessWords,
  flatnessGuide: flatnessGuideWords,
  flatnessSees: flatnessSeesWords,
  readers: readersWords,
  recording: recordingWords,
  inspection: inspectionWords,
  certificates: certificatesWords,
  mySeals: mySealsWords,
  instruments: instrumentsWords,
  lapping: lappingWords,
  leak: leakWords,
  surveys: surveysWords,
  limitForms: limitFormsWords,
  limitReasons: limitReasonsWords,
  limitSets: limitSetsWords,
  measuredValues: measuredValuesWords,
  people: peopleWords,
  results: resultsWords,
  staticTests: staticTestsWords,
  surveyFigures: surveyFiguresWords,
  touched: touchedWords,
  wearTrack: wearTrackWords,
  springCheck: springCheckWords,
  assembly: assemblyWords,
  stripRecords: stripRecordsWords,
  trade: tradeWords,
  wholeFace: wholeFaceWords,
  wholeFaces: wholeFacesWords,
  workOrders: workOrdersWords,
} as const
