import { describe, expect, it } from 'vitest'
import type { RingMark } from '../../../src/science/marks/fit-marks.ts'
import { fewestMarks, judgeMarks } from '../../../src/science/marks/judge-marks.ts'

const good: readonly RingMark[] = Array.from({ length: 24 }, (_, i) => {
  const angle = (i * 15 * Math.PI) / 180
  const r = i % 2 === 0 ? 0.72 : 0.98
  return { x: r * Math.cos(angle), y: r * Math.sin(angle), order: i % 5 }
})

describe('judgeMarks', () => {
  it('lets good marks pass', () => {
    expect(judgeMarks(good, 0.7)).toBeNull()
  })

  it('asks for 20 marks', () => {
    expect(fewestMarks).toBe(20)
    expect(judgeMarks(good.slice(0, 19), 0.7)).toMatchObject({
      reason: 'too-few-marks',
      measured: 19,
      limit: 20,
    })
  })

  it('names the mark that misses the land by more than 3 %', () => {
    const moved = good.map((mark, i) => (i === 4 ? { ...mark, x: mark.x * 1.5, y: 0.95 } : mark))
    expect(judgeMarks(moved, 0.7)).toMatchObject({ reason: 'mark-off-land', markIndex: 4 })
    const inner = good.map((mark, i) => (i === 6 ? { ...mark, y: 0.66 } : mark))
    expect(judgeMarks(inner, 0.7)).toMatchObject({ reason: 'mark-off-land', markIndex: 6 })
    const near = good.map((mark, i) => (i === 6 ? { ...mark, x: 0, y: 0.68 } : mark))
    expect(judgeMarks(near, 0.7)).toBeNull()
  })

  it('asks for three orders', () => {
    const two = good.map((mark, i) => ({ ...mark, order: i % 2 }))
    expect(judgeMarks(two, 0.7)).toMatchObject({ reason: 'too-few-orders', measured: 2 })
  })

  it('says from where to where marks are missing, also across 0 degrees', () => {
    const turned = (mark: RingMark, by: number) => ({
      ...mark,
      x: mark.x * Math.cos(by) - mark.y * Math.sin(by),
      y: mark.x * Math.sin(by) + mark.y * Math.cos(by),
    })
    // 24 marks pressed into 285 degrees of the ring leave 75 without.
    const pressed = good.map((mark, i) => turned(mark, (-i * 2.6 * Math.PI) / 180))
    const got = judgeMarks(pressed, 0.7)
    expect(got).toMatchObject({ reason: 'marks-leave-gap', limit: 60 })
    expect(got?.gapDeg?.[0]).toBeCloseTo(23 * 12.4, 6) // rounding of the arc tangent
    expect(got?.gapDeg?.[1]).toBeCloseTo(0, 6)
  })

  it('asks for marks near both edges', () => {
    const inside = good.map(({ x, y, order }) => {
      const r = Math.hypot(x, y)
      const held = Math.min(r, 0.8) / r
      return { x: x * held, y: y * held, order }
    })
    expect(judgeMarks(inside, 0.7)).toMatchObject({ reason: 'marks-leave-edge', measured: 0 })
  })
})
