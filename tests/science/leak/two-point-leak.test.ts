import { describe, expect, it } from 'vitest'
import { twoPointLeak } from '../../../src/science/leak/two-point-leak.ts'
import { readReference } from '../read-reference.ts'

interface Closed {
  title: string
  volumeM3: number
  p1Pa: number
  p2Pa: number
  durationS: number
  T1K: number
  T2K: number
  leakPaM3PerS: number
}
interface DecayCase {
  id: string
  input: Record<string, number>
  expect: number
}
const closed = readReference<Closed[]>('leak/two-point-cases.json')
const decay = readReference<DecayCase[]>('leak/decay-cases.json')
const laminar = readReference<Record<string, number>>('leak/laminar-decay.json')

const find = (id: string) => {
  const row = decay.find((c) => c.id === id)
  if (row === undefined) throw new Error(`the case ${id} is missing`)
  return { expected: row.expect, value: (key: string) => row.input[key] ?? Number.NaN }
}

const base = {
  volumeL: 5,
  referenceTemperatureC: 20,
  start: { timeS: 0, pressureKPaAbs: 271.325, temperatureC: 21 },
  end: { timeS: 600, pressureKPaAbs: 268.1, temperatureC: 20.5 },
}

describe('twoPointLeak', () => {
  it('has the closed cases', () => {
    expect(closed.length).toBe(4)
  })

  it.each(closed)('gives the closed case: $title', (row) => {
    const leak = twoPointLeak({
      volumeL: row.volumeM3 * 1000,
      referenceTemperatureC: 20,
      start: { timeS: 0, pressureKPaAbs: row.p1Pa / 1000, temperatureC: row.T1K - 273.15 },
      end: {
        timeS: row.durationS,
        pressureKPaAbs: row.p2Pa / 1000,
        temperatureC: row.T2K - 273.15,
      },
    })
    // The two terms cancel to a hundredth or less: thirteen digits of V p / dt, about 11 Pa m3/s.
    expect(Math.abs(leak - row.leakPaM3PerS)).toBeLessThan(1e-11)
  })

  it.each([
    ['settle2-0', 0],
    ['settle2-300', 300],
  ])('shows the bias of a settling pressure: %s', (id, from) => {
    const { value, expected } = find(id)
    const at = (t: number) => (value('A') * Math.exp(-t / value('tau'))) / 1000
    const state = (t: number) => ({ timeS: t, pressureKPaAbs: 600 + at(t), temperatureC: 20 })
    const leak = twoPointLeak({
      volumeL: 1000,
      referenceTemperatureC: 20,
      start: state(from),
      end: state(value('t2')),
    })
    // In Pa/s for 1 m3; the level of 600 kPa costs six digits of sixteen.
    expect(Math.abs(leak / expected - 1)).toBeLessThan(1e-8)
  })

  it('takes a drift of temperature at constant pressure for the equivalent leak', () => {
    const { value, expected } = find('dT-1')
    const temperatureC = value('T') - 273.15
    const state = (timeS: number) => ({
      timeS,
      pressureKPaAbs: value('p') / 1000,
      temperatureC: temperatureC + value('dTdt') * timeS,
    })
    const leak = twoPointLeak({
      volumeL: value('V') * 1000,
      referenceTemperatureC: 20,
      start: state(0),
      end: state(600),
    })
    // The case is linear in the drift of 0.1 K; the exact formula is 0.1 / 293 lower.
    expect(Math.abs(leak / expected - 1)).toBeLessThan(0.1 / 293)
  })

  it('agrees with a laminar decay whose slope is known', () => {
    // Closed form of V dp/dt = -C (p^2 - pa^2), checked against its numerical solution.
    const of = (key: string) => laminar[key] ?? Number.NaN
    const leak = twoPointLeak({
      volumeL: of('volumeM3') * 1000,
      referenceTemperatureC: 20,
      start: { timeS: 0, pressureKPaAbs: of('p0Pa') / 1000, temperatureC: 20 },
      end: { timeS: 60, pressureKPaAbs: of('p60sPa') / 1000, temperatureC: 20 },
    })
    const middle = (of('p0Pa') + of('p60sPa')) / 2
    // Mean flow against the flow at the middle pressure: equal to second order in the 0.3 % drop.
    expect(leak / (of('conductance') * (middle ** 2 - of('paPa') ** 2))).toBeCloseTo(1, 5)
  })

  it('is zero for pure cooling, and changes sign when time runs the other way round', () => {
    const end = { timeS: 600, temperatureC: 20, pressureKPaAbs: (271.325 * 293.15) / 294.15 }
    // rounding of 271 x 5 / 600
    expect(Math.abs(twoPointLeak({ ...base, end }))).toBeLessThan(1e-14)
    const swapped = {
      ...base,
      start: { ...base.end, timeS: 0 },
      end: { ...base.start, timeS: 600 },
    }
    expect(twoPointLeak(swapped)).toBe(-twoPointLeak(base))
  })

  it('scales with volume and reference temperature and falls with time', () => {
    const leak = twoPointLeak(base)
    expect(twoPointLeak({ ...base, volumeL: 10 })).toBeCloseTo(2 * leak, 14) // rounding only
    expect(twoPointLeak({ ...base, end: { ...base.end, timeS: 1200 } })).toBeCloseTo(leak / 2, 14)
    expect(twoPointLeak({ ...base, referenceTemperatureC: 0 }) / leak).toBeCloseTo(
      273.15 / 293.15,
      13,
    )
  })

  it.each([
    { volumeL: 0 },
    { volumeL: Number.NaN },
    { referenceTemperatureC: -273.15 },
    { start: { ...base.start, pressureKPaAbs: -1 } },
    { end: { ...base.end, timeS: 0 } },
    { end: { ...base.end, timeS: -5 } },
    { end: { ...base.end, temperatureC: -273.15 } },
  ])('refuses %o', (wrong) => {
    expect(() => twoPointLeak({ ...base, ...wrong })).toThrow(/^twoPointLeak requires /)
  })
})
