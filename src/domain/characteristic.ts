/**
 * What is measured and held against limits. Values and limits are stored in one unit each: lengths
 * in µm, drops in kPa, gas leaks in Pa·m³/s at 20 °C, liquid leaks in g/h or mL/h, vapour in mL/m³.
 */
export const characteristics = [
  'flatness',
  'roughness',
  'face-height',
  'face-parallelism',
  'shaft-run-out',
  'sleeve-run-out',
  'shaft-straightness',
  'radial-lift',
  'end-play',
  'chamber-face-squareness',
  'seat-face-squareness',
  'register-concentricity',
  'static-drop',
  'static-leak-rate',
  'liquid-leak-mass',
  'liquid-leak-volume',
  'vapour-concentration',
] as const
export type Characteristic = (typeof characteristics)[number]

/** Belong to one face of the seal; the others to the machine or to the seal as a whole. */
export const faceCharacteristics = [
  'flatness',
  'roughness',
  'face-height',
  'face-parallelism',
] as const satisfies readonly Characteristic[]

/** Read with an instrument as one figure, once or several times. */
export const measuredCharacteristics = [
  'roughness',
  'face-height',
  'face-parallelism',
  'shaft-run-out',
  'sleeve-run-out',
  'shaft-straightness',
  'radial-lift',
  'end-play',
  'chamber-face-squareness',
  'seat-face-squareness',
  'register-concentricity',
] as const satisfies readonly Characteristic[]
export type MeasuredCharacteristic = (typeof measuredCharacteristics)[number]

/** Swept with an indicator, position by position: a survey keeps every reading. */
export const surveyCharacteristics = [
  'shaft-run-out',
  'sleeve-run-out',
  'register-concentricity',
  'chamber-face-squareness',
  'seat-face-squareness',
  'end-play',
  'radial-lift',
  'shaft-straightness',
] as const satisfies readonly MeasuredCharacteristic[]
export type SurveyCharacteristic = (typeof surveyCharacteristics)[number]
