import type { CertificateRecord } from './certificate.ts'
import { certifiedAssembly } from './certified-assembly.ts'
import { certifiedSprings } from './certified-springs.ts'
import { certifiedTracks } from './certified-tracks.ts'
import type { Evidence } from './evidence.ts'

/**
 * Worn tracks, springs and assembly of an order; each left out where nobody recorded any, as in
 * records from before there were such.
 */
export function certifiedStrip(
  evidence: Evidence,
): Pick<CertificateRecord, 'wearTracks' | 'springs' | 'assembly'> {
  const wearTracks = certifiedTracks(evidence)
  const springs = certifiedSprings(evidence)
  const assembly = certifiedAssembly(evidence)
  return {
    ...(wearTracks.length === 0 ? {} : { wearTracks }),
    ...(springs.length === 0 ? {} : { springs }),
    ...(assembly === null ? {} : { assembly }),
  }
}
