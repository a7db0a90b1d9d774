/** Sources of uncertainty by their ids, as they stand in lines, lists and sentences. */
const sources: Readonly<Record<string, string>> = {
  reading: 'reading the bands',
  repeatability: 'scatter of repeated readings',
  'optical-flat': 'flatness of the optical flat',
  'lamp-wavelength': 'wavelength of the lamp',
  'viewing-angle': 'viewing angle',
  'thermal-bow': 'thermal bow of the ring',
  'flat-thermal-bow': 'thermal bow of the optical flat',
  volume: 'volume',
  pressure: 'gauge',
  'start-pressure': 'pressure at the start',
  'end-pressure': 'pressure at the end',
  'start-resolution': 'step of the gauge at the start',
  'end-resolution': 'step of the gauge at the end',
  temperature: 'temperature of the gas',
  'start-temperature': 'temperature at the start',
  'end-temperature': 'temperature at the end',
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
