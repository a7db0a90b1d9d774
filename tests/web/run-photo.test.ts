import { readFileSync } from 'node:fs'
import sharp from 'sharp'
import { describe, expect, it } from 'vitest'
import { surfaceMap } from '../../src/science/surface/surface-map.ts'
import { runPhoto } from '../../src/web/run-photo.ts'

const folder = new URL('../../fixtures/files/bands/', import.meta.url)
const bytesOf = (name: string) => new Uint8Array(readFileSync(new URL(`${name}.jpg`, folder)))

interface Truth {
  faces: Record<
    string,
    {
      expect: string
      peakToValleyBands: number
      coningIdMinusOd: number
      opensTowardsDeg: number
      outerPoints: [number, number][]
      innerPoints: [number, number][]
    }
  >
}
const { faces } = JSON.parse(readFileSync(new URL('truth.json', folder), 'utf8')) as Truth
const truthOf = (name: string) => {
  const truth = faces[name]
  if (truth === undefined) throw new Error(`there is no ${name}`)
  const { outerPoints: outer, innerPoints: inner, opensTowardsDeg } = truth
  return { ...truth, options: { outer, inner, wedge: { opensTowardsDeg } } }
}

// Each photograph takes a second or two, longer beside other work.
describe('runPhoto', { timeout: 60_000 }, () => {
  it.each(['cylinder', 'roll-off', 'cone'])('reads the synthetic face %s', async (name) => {
    const truth = truthOf(name)
    const told: number[] = []
    const onProgress = (share: number) => told.push(share)
    const answer = await runPhoto(bytesOf(name), { ...truth.options, onProgress })
    if (answer.kind !== 'read') throw new Error(answer.reason)
    const error = answer.peakToValleyBands - truth.peakToValleyBands
    expect(Math.abs(error)).toBeLessThan(2 * answer.standardUncertaintyBands)
    // The bar that the method is held to: the larger of 0.1 band and 5 %.
    expect(Math.abs(error)).toBeLessThan(Math.max(0.1, 0.05 * truth.peakToValleyBands))
    expect([answer.imageWidth, answer.imageHeight]).toEqual([1200, 900])
    expect(told).toEqual([...told].sort((a, b) => a - b))
    expect(told.at(-1)).toBe(0.9)
    // The taper has its sign by the wedge: mean of the outer less mean of the inner edge.
    const map = surfaceMap(answer.surface, { ringCount: 2, angleCount: 60 })
    const mean = (row: readonly number[] = []) => row.reduce((a, b) => a + b, 0) / row.length
    const taper = mean(map.heights[1]) - mean(map.heights[0])
    const bar = Math.max(0.1, 0.05 * truth.peakToValleyBands)
    expect(Math.abs(taper + truth.coningIdMinusOd)).toBeLessThan(bar)
  })

  it('refuses a face with a step across it', async () => {
    const answer = await runPhoto(bytesOf('step'), truthOf('step').options)
    expect(answer).toMatchObject({ kind: 'refused', reason: 'model-does-not-fit' })
  })

  it('reads a photograph of twelve million pixels in pixels of its own', async () => {
    const { options, peakToValleyBands } = truthOf('cylinder')
    const large = await sharp(bytesOf('cylinder')).resize(4000, 3000).jpeg().toBuffer()
    const by = 4000 / 1200
    const scaled = (points: [number, number][]) =>
      points.map(([x, y]) => [(x + 0.5) * by - 0.5, (y + 0.5) * by - 0.5] as const)
    const edges = { outer: scaled(options.outer), inner: scaled(options.inner) }
    const answer = await runPhoto(new Uint8Array(large), { ...options, ...edges })
    if (answer.kind !== 'read') throw new Error(answer.reason)
    expect(Math.abs(answer.peakToValleyBands - peakToValleyBands)).toBeLessThan(0.1) // the same bar
    expect(answer.imageWidth).toBe(4000)
    // The face has a radius of 349 pixels in the small picture, known to a pixel.
    expect(Math.abs(answer.outer.rx / by - 349)).toBeLessThan(3)
    for (const { points } of answer.bandLines) {
      for (const [x] of points) expect(Math.abs(x - answer.outer.cx)).toBeLessThan(answer.outer.rx)
    }
  })

  it('says what is wrong with a file', async () => {
    const { options } = truthOf('cone')
    const text = new TextEncoder().encode('no picture')
    await expect(runPhoto(text, options)).rejects.toMatchObject({ reason: 'photo-not-a-photo' })
    const part = bytesOf('cone').subarray(0, 3000)
    await expect(runPhoto(part, options)).rejects.toMatchObject({ reason: 'photo-damaged' })
  })

  it('lets four wait while one is read, and asks the sixth to come again', async () => {
    const { options } = truthOf('cone')
    const text = new TextEncoder().encode('no picture')
    const five = Array.from({ length: 5 }, () => runPhoto(text, options))
    await expect(runPhoto(text, options)).rejects.toMatchObject({
      kind: 'too-many',
      reason: 'photo-busy',
    })
    const ends = await Promise.allSettled(five)
    expect(ends.map((one) => one.status)).toEqual(Array(5).fill('rejected'))
    await expect(runPhoto(text, options)).rejects.toMatchObject({ reason: 'photo-not-a-photo' })
  })

  it('stops a reading that takes too long', async () => {
    const slow = runPhoto(bytesOf('cone'), truthOf('cone').options, { longestMs: 1 })
    await expect(slow).rejects.toMatchObject({ kind: 'too-many', reason: 'photo-too-long' })
  })
})
