import { describe, expect, it } from 'vitest'
import { comparedTracks } from '../../src/domain/compared-tracks.ts'
import { addWearTrack } from '../../src/store/add-wear-track.ts'
import { readEvidence } from '../../src/store/read-evidence.ts'
import { buildShop } from '../support/build-shop.ts'
import { actorOf } from '../support/cast.ts'
import { freshTrack } from '../support/strip-steps.ts'

const typed = (mm: number) => ({ mm, typed: String(mm) })

describe('comparedTracks', () => {
  it('takes the widest place of the newest track of a face, and the width of its land', () => {
    const shop = buildShop()
    const by = actorOf(shop.cast.tess)
    const first = addWearTrack(shop.store, freshTrack(shop), by)
    const again = { replacesId: first.id, reason: 'misread' }
    const widths = { noseWidth: typed(4), trackWidths: [typed(4.1), typed(4.3)] }
    addWearTrack(shop.store, freshTrack(shop, { ...again, ...widths, movementUm: 300 }), by)
    const evidence = readEvidence(shop.store, shop.workOrder.id)
    const tracks = comparedTracks(evidence, [])
    expect(tracks).toHaveLength(1)
    expect(tracks[0]).toMatchObject({
      faceKind: 'rotating-face',
      noseWidthMm: 4,
      trackWidthMm: 4.3,
    })
    const face = evidence.seal.components.find((one) => one.kind === 'rotating-face')
    const landMm = ((face?.outerDiameterMm ?? 0) - (face?.innerDiameterMm ?? 0)) / 2
    expect(tracks[0]?.faceWidthMm).toBe(landMm)
    expect(tracks[0]?.comparison.verdict).toBe('not-surveyed')
  })

  it('gives no width of a land whose diameters nobody stated', () => {
    const shop = buildShop()
    addWearTrack(shop.store, freshTrack(shop), actorOf(shop.cast.tess))
    const { wearTracks, seal } = readEvidence(shop.store, shop.workOrder.id)
    const components = seal.components.map((one) => ({ ...one, innerDiameterMm: null }))
    const bare = { wearTracks, seal: { ...seal, components } }
    expect(comparedTracks(bare, [])[0]?.faceWidthMm).toBeNull()
  })

  it('has nothing to compare where no track was recorded', () => {
    const shop = buildShop()
    expect(comparedTracks(readEvidence(shop.store, shop.workOrder.id), [])).toEqual([])
  })
})
