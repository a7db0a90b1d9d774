import { describe, expect, it } from 'vitest'
import { labelHeightPx, labelPlaces } from '../../src/plots/label-places.ts'

const line = (y: number, text: string) => ({
  points: Array.from({ length: 101 }, (_, i) => ({ x: i * 3, y })),
  text,
})
const everywhere = () => true

describe('labelPlaces', () => {
  it('lets no two texts touch', () => {
    const lines = Array.from({ length: 12 }, (_, i) => line(4 * i, `+0.${i}0`))
    const labels = labelPlaces(lines, [], everywhere)
    expect(labels.length).toBeGreaterThan(4)
    for (const [i, a] of labels.entries()) {
      for (const b of labels.slice(i + 1)) {
        const across = Math.abs(a.at.x - b.at.x) - (a.widthPx + b.widthPx) / 2
        const along = Math.abs(a.at.y - b.at.y) - labelHeightPx
        expect(Math.max(across, along)).toBeGreaterThan(0)
      }
    }
  })

  it('keeps away from marks that are there already', () => {
    const mark = { text: 'peak', at: { x: 0, y: 10 }, widthPx: 40 }
    const [label] = labelPlaces([line(10, '0.5')], [mark], everywhere)
    expect(label?.at.x).toBeGreaterThan(200)
  })

  it('stays where there is room and leaves out a line without any', () => {
    const isFree = ({ x }: { x: number }) => x > 100 && x < 200
    const [label] = labelPlaces([line(10, '0.5')], [], isFree)
    expect(label?.at.x).toBeGreaterThan(100)
    expect(label?.at.x).toBeLessThan(200)
    expect(labelPlaces([line(10, '0.5')], [], () => false)).toEqual([])
  })
})
