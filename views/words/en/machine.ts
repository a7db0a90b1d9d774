/** Words of the description of the machine interface. */
export const machineWords = {
  title: 'Ringproof, machine interface',
  description:
    'Records and calculators for rigs, order systems and checks. Field names end in their unit. ' +
    'Errors are problem details (RFC 9457). A token acts as its user and can never sign a release.',
  token: 'A token made by the operator: npm run -s admin -- token add --user NAME --label LABEL',
  idempotency:
    'The same key and body gives the first answer again; the same key with another body is refused.',
  paths: {
    apiDescription: 'This description',
    apiCountedFlatness:
      'Flatness from counted light bands, with its uncertainty budget. A line count sees taper and is nearly blind to lobes.',
    apiPhotoFlatness:
      'Flatness of a whole face from a photograph of its light bands: figures, map and uncertainty budget; or why the picture gives no honest figure, and what to do. Without wedge the form is undetermined and the map may be upside down.',
    apiMarkedFlatness:
      'Flatness of a whole face from 20 or more points marked along its bands on a picture, each with the order of its band: figures, map and uncertainty budget.',
    apiPressureChange:
      'Leak rate of a closed volume from two states or a trace, compensated for temperature. Positive: gas leaves.',
    apiCollected:
      'Steady leakage from a mass that is collected and weighed, with the run-in taken out: by mass and volume an hour, with its 95 % interval. No figure while it still runs in.',
    apiLeakConvert:
      'A leak of gas in another unit of the trade. Units that name no temperature are of gas at referenceTemperatureC, volumes at 101.325 kPa; sccm and scfh name their state.',
    apiStoredEnergy:
      'The energy that gas under pressure lets go when it expands to the ambient pressure at once, also as a mass of TNT, with the caution to read before anything is pressurised.',
    apiRunOut:
      'What an indicator read round one turn says: total reading, eccentricity and its direction, waves, roundness by least squares and by the minimum zone, tilt of a face, what these positions could have missed. Angles in the direction of turning; a higher value means that the surface is nearer. The phase of a wave is where its first crest stands. Every reading counts for every figure; where the last one is at the first position again, its drift is told.',
    apiStraightness:
      'Straightness of a shaft from a turn at each of three or more planes: largest total reading, straightness of the line of centres, and where and which way it is bowed.',
    apiSpring:
      'Load of the springs of a seal at their working length, from a stated rate or from loads at lengths of one spring: pressure on the face, travel left, and what end play or lapping changes.',
    apiConformity:
      'Whether a result conforms, by a decision rule, with the probability of conformity and what the decision risks. All numbers in one unit.',
    apiUncertainty:
      'Uncertainty of a result from its quantities and the expression that joins them: the linear budget, and by trials where asked for. Quantities are independent.',
    apiCreateCustomer: 'Adds a customer',
    apiCreateWorkOrder: 'Receives a seal: opens a work order for a known seal or a new one',
    apiListWorkOrders: 'Work orders, newest first; a customer sees their own',
    apiShowWorkOrder:
      'One work order with everything recorded on it and what is missing; a customer’s own with its results once released',
    apiCreateFlatnessReading: 'Records a light-band reading of a face',
    apiCreateStaticTest: 'Records a static test by its two ends',
    apiCreateDynamicRun:
      'Begins a run of a seal on a rig: what runs, through which steps, and readings where there are some; answers the steady leakage of what was weighed so far',
    apiAddRunSamples:
      'Keeps a batch of readings of a run, in the order in which they were read: up to 5000, each with one channel at least. Send an idempotency key: a batch that is sent twice is then kept once.',
    apiCreateMeasuredValue:
      'Records a figure read with an instrument: finish, height, run-out or fit',
    apiCreateFinding:
      'Records what is seen on a part of a stripped seal, and apart from it a suspected cause. Refused while nobody has stated that the seal is clean.',
    apiCreatePartLine:
      'Records what becomes of a part: re-used, relapped or replaced, and of a new one its batch, paper, compound and cure date',
    apiCreateRunOutSurvey:
      'Records a survey with an indicator: readings of a full turn, once or several times over, of a shaft, sleeve, register or face. It becomes a measured value, its total indicator reading, with everything else that the readings say.',
    apiCreateLapCycle:
      'Records a lap cycle of a face: plate, abrasive, load, time, stock and heights; face and plate alone are asked for',
    apiCreateWearTrack:
      'Records the worn track of a face as found: widths of track and nose, and the movement that they tell',
    apiCreateSpringCheck:
      'Records springs of the bench: lengths, and loads at lengths of one spring or its stated rate; answers what all of them press with at the working length',
    apiCreateAssembly:
      'Records how a seal was put together: working length, set screws and torques, clips, and the load of the springs against the design values given with it',
    apiHandOver: 'Hands the order over to the inspector; refused with what is missing',
    apiShowCertificate: 'The record that a certificate certifies',
    apiDownloadCertificate: 'The certificate as issued, byte for byte (PDF)',
    apiVerify: 'What a certificate number stands for and whether it is current; no sign-in',
  },
  answers: {
    ok: 'Done',
    created: 'Recorded',
    problem: 'Refused, with the reason',
    pdf: 'The document',
  },
} as const
