import type { Characteristic } from '../../../src/domain/characteristic.ts'

/** Sources of uncertainty by their ids, as they stand in lines, lists and sentences. */
const sources: Readonly<Record<string, string>> = {
  reading: 'reading the bands',
  repeatability: 'scatter of repeated readings',
  'optical-flat': 'flatness of the optical flat',
  'optical-flat-calibration': 'calibration of the optical flat',
  wavelength: 'wavelength of the lamp',
  'viewing-angle': 'viewing angle',
  marks: 'fit to the marked points',
  disagreement: 'disagreement of the combined readings',
  'between-crossings': 'what lies between the lines of the grid',
  'photo-statistical': 'noise of the picture',
  'photo-form': 'form that the fit can follow',
  'photo-edge': 'land near the edges that is not seen',
  'photo-perspective': 'perspective',
  'photo-view': 'angle of view',
  'photo-floor': 'what is left in a perfect picture',
  'thermal-bow': 'thermal bow of the ring',
  'thermal-bow-of-flat': 'thermal bow of the optical flat',
  volume: 'volume',
  'volume-error': 'error of the known volume',
  pressure: 'gauge',
  'pressure-error': 'error of the gauge',
  'start-pressure': 'pressure at the start',
  'end-pressure': 'pressure at the end',
  'start-pressure-error': 'error of the gauge at the start',
  'end-pressure-error': 'error of the gauge at the end',
  'start-pressure-resolution': 'step of the gauge at the start',
  'end-pressure-resolution': 'step of the gauge at the end',
  temperature: 'temperature',
  'temperature-error': 'error of the thermometer',
  'start-temperature': 'temperature at the start',
  'end-temperature': 'temperature at the end',
  'start-temperature-error': 'error of the thermometer at the start',
  'end-temperature-error': 'error of the thermometer at the end',
  'start-temperature-resolution': 'step of the thermometer at the start',
  'end-temperature-resolution': 'step of the thermometer at the end',
  'temperature-change': 'change of temperature',
  'elapsed-time': 'time held',
  calibration: 'calibration of the instrument',
  instrument: 'error of the instrument',
  resolution: 'step of the instrument',
  surface: 'scatter over the surface',
  reference: 'reference specimen',
  setting: 'what the instrument was set on',
  alignment: 'how the instrument stood',
}

/** The word for a source; its id where it has none. */
export function sourceWord(source: string): string {
  return Object.hasOwn(sources, source) ? (sources[source] ?? source) : source
}

const ofLength = 'µm'
const units: Readonly<Record<string, string>> = {
  reading: 'bands',
  marks: 'bands',
  'between-crossings': 'bands',
  disagreement: ofLength,
  'photo-statistical': 'bands',
  'photo-form': 'bands',
  'photo-edge': 'bands',
  'photo-perspective': 'bands',
  'photo-view': 'bands',
  'photo-floor': 'bands',
  'optical-flat': ofLength,
  'optical-flat-calibration': ofLength,
  wavelength: 'nm',
  'thermal-bow': 'K',
  'thermal-bow-of-flat': 'K',
  'start-pressure': 'Pa',
  'end-pressure': 'Pa',
  'start-pressure-error': 'Pa',
  'end-pressure-error': 'Pa',
  'start-pressure-resolution': 'Pa',
  'end-pressure-resolution': 'Pa',
  temperature: 'K',
  'start-temperature': 'K',
  'end-temperature': 'K',
  'start-temperature-error': 'K',
  'end-temperature-error': 'K',
  'start-temperature-resolution': 'K',
  'end-temperature-resolution': 'K',
  'temperature-change': 'K',
  'elapsed-time': 's',
  calibration: ofLength,
  instrument: ofLength,
  resolution: ofLength,
  surface: ofLength,
  reference: ofLength,
  setting: ofLength,
}

/**
 * The unit that a source is stated in; '' for a share of one, such as the volume's. Repeats are
 * counts of bands under a lamp, and lengths elsewhere.
 */
export function sourceUnit(source: string, characteristic: Characteristic): string {
  if (source === 'repeatability') return characteristic === 'flatness' ? 'bands' : ofLength
  return Object.hasOwn(units, source) ? (units[source] ?? '') : ''
}
