import { expect, test } from 'vitest'
import { clockSketch } from '../../src/plots/clock-sketch.ts'

const placeOf = (fromHour: number, toHour: number) => {
  const place = { fromHour, toHour }
  const { shapes } = clockSketch({ sizePx: 200, place, across: null, hasNumbers: false })
  const found = shapes.find((one) => one.kind === 'path' && one.part === 'place')
  const numbers = found?.kind === 'path' ? (found.d.match(/-?\d+(\.\d+)?/g) ?? []).map(Number) : []
  const points = numbers.flatMap((x, i) => (i % 2 === 0 ? [{ x, y: numbers[i + 1] ?? 0 }] : []))
  // A place without points would pass every test of where they lie.
  if (points.length < 4) throw new Error(`the place has ${points.length} points`)
  return points
}

test('a place lies where the hands of a clock would point', () => {
  // Three to six o'clock: right of and below the middle.
  for (const { x, y } of placeOf(3, 6)) {
    expect(x).toBeGreaterThanOrEqual(99.9)
    expect(y).toBeGreaterThanOrEqual(99.9)
  }
  // Ten to two runs over twelve: all of it above the middle.
  for (const { y } of placeOf(10, 2)) expect(y).toBeLessThan(100)
})

test('from an hour to itself is all round', () => {
  const xs = placeOf(4, 4).map((one) => one.x)
  expect(Math.min(...xs)).toBeLessThan(30)
  expect(Math.max(...xs)).toBeGreaterThan(170)
})

test('one hour alone is a line across the ring, and nothing is filled', () => {
  const options = { sizePx: 200, place: null, loneHour: 3, across: 'middle', hasNumbers: false }
  const { shapes } = clockSketch(options as Parameters<typeof clockSketch>[0])
  expect(shapes.some((one) => one.kind === 'path' && one.part === 'place')).toBe(false)
  const line = shapes.find((one) => one.kind === 'line' && one.stroke === 'accent')
  expect(line).toMatchObject({ y1: 100, y2: 100 })
  expect(line?.kind === 'line' && line.x1 < 146 && line.x2 > 174).toBe(true)
})

test('numbers all twelve hours, and fills nothing without a place', () => {
  const { shapes } = clockSketch({ sizePx: 200, place: null, across: null, hasNumbers: true })
  expect(shapes.filter((one) => one.kind === 'text')).toHaveLength(12)
  expect(shapes.some((one) => one.kind === 'path' && one.part === 'place')).toBe(false)
})

test('refuses a size or an hour out of range', () => {
  const base = { sizePx: 200, place: null, across: null, hasNumbers: false }
  expect(() => clockSketch({ ...base, sizePx: 20 })).toThrow('sizePx')
  expect(() => clockSketch({ ...base, loneHour: -1 })).toThrow('hour')
  expect(() => clockSketch({ ...base, place: { fromHour: 13, toHour: 1 } })).toThrow('hour')
})
