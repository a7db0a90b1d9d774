import type { NewLimit } from './limit-set.ts'
import { typedLimit } from './typed-limit.ts'

/**
 * What a workshop may start its first limit set from; data to be looked through and changed, each
 * with what it is founded on.
 */
export const defaultLimits: readonly NewLimit[] = [
  typedLimit({
    characteristic: 'flatness',
    upper: '3',
    unit: 'helium-bands',
    asWritten: '3 helium light bands',
    basis: 'published',
    source: 'Installation leaflets of several seal makers: three light bands for liquid duty',
  }),
  typedLimit({
    characteristic: 'static-drop',
    upper: '14',
    unit: 'kPa',
    asWritten: '0.014 MPa in 5 min, at 0.17 MPa gauge, at most 28 L',
    withinS: 300,
    volumeAtMostL: 28,
    startAtLeastKPaGauge: 170,
    basis: 'published',
    source: 'API 682, as quoted in a published paper; the standard itself not seen',
    edition: '4th edition, by its list of contents',
    clause: '10.3.4.2',
  }),
  typedLimit({
    characteristic: 'static-leak-rate',
    upper: '0.05',
    unit: 'pa-m3-per-s',
    asWritten: '0.05 Pa·m³/s at 20 °C',
    basis: 'house rule',
    source:
      'Proposed as a start, without a source, so that a large volume can’t hide a leak; set your own',
  }),
]

/** Two directions on every face (common practice, no source). */
export const defaultDirectionsRequiredCount = 2
