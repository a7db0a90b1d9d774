import { requireRange } from '../check/require-range.ts'

/** A gas on the way through a leak. */
export interface LeakingGas {
  readonly upstreamKPaAbs: number
  readonly downstreamKPaAbs: number
  readonly viscosityUPaS: number
}

/**
 * Gives what another gas, or other pressures, would leak through the same gap.
 *
 * Q2 = Q1 (viscosity1 / viscosity2) (p2up^2 - p2down^2) / (p1up^2 - p1down^2)
 *
 * @param leakPaM3PerS as measured: any finite number
 * @param measured pressures from 0 to 1e6 kPa, upstream above downstream; viscosity from 0.1 to 1e6
 *   uPa s
 * @param wanted the same
 * @returns Pa m3/s at the same temperature
 * @throws RangeError outside these ranges
 * Validity: an estimate: viscous flow, a gap that does not change with the pressure, one temperature.
 *   Below about 1e-6 Pa m3/s flow is no longer viscous; a face that is pressed harder closes.
 * Source: laminar flow of an ideal gas through a narrow gap, Q ~ (p1^2 - p2^2) / viscosity (from
 *   memory).
 * @example equivalentGasLeak(1, { upstreamKPaAbs: 300, downstreamKPaAbs: 100, viscosityUPaS: 18 }, {
 *   upstreamKPaAbs: 500, downstreamKPaAbs: 100, viscosityUPaS: 18 }) // 3.000
 */
export function equivalentGasLeak(
  leakPaM3PerS: number,
  measured: LeakingGas,
  wanted: LeakingGas,
): number {
  requireRange('equivalentGasLeak', 'leakPaM3PerS', leakPaM3PerS, { from: -1e12, to: 1e12 })
  return (leakPaM3PerS * drive(wanted)) / drive(measured)
}

function drive({ upstreamKPaAbs, downstreamKPaAbs, viscosityUPaS }: LeakingGas): number {
  const name = 'equivalentGasLeak'
  const pressures = { from: 0, to: 1e6 }
  requireRange(name, 'upstreamKPaAbs', upstreamKPaAbs, pressures)
  requireRange(name, 'downstreamKPaAbs', downstreamKPaAbs, pressures)
  requireRange(name, 'viscosityUPaS', viscosityUPaS, { from: 0.1, to: 1e6 })
  if (!(upstreamKPaAbs > downstreamKPaAbs)) {
    throw new RangeError(`${name} requires upstream above downstream, got ${upstreamKPaAbs}`)
  }
  return (upstreamKPaAbs ** 2 - downstreamKPaAbs ** 2) / viscosityUPaS
}
