import { describe, expect, it } from 'vitest'
import { requireTrace } from '../../../src/science/leak/require-trace.ts'

const trace = [0, 1, 2, 3, 4, 5].map((timeS) => ({ timeS, pressureKPaAbs: 300, temperatureC: 20 }))
const at = (index: number, wrong: object) =>
  trace.map((sample, i) => (i === index ? { ...sample, ...wrong } : sample))

describe('requireTrace', () => {
  it('gives a usable trace back, with temperatures or without', () => {
    expect(requireTrace('f', trace)).toBe(trace)
    const bare = trace.map(({ timeS, pressureKPaAbs }) => ({ timeS, pressureKPaAbs }))
    expect(requireTrace('f', bare)).toBe(bare)
  })

  it.each([
    ['too few readings', trace.slice(0, 5)],
    ['a time that stands still', at(3, { timeS: 2 })],
    ['a time that runs back', at(3, { timeS: 1.5 })],
    ['a time that is no number', at(3, { timeS: Number.NaN })],
    ['a negative absolute pressure', at(2, { pressureKPaAbs: -1 })],
    ['a temperature missing in the middle', at(2, { temperatureC: undefined })],
    ['an impossible temperature', at(2, { temperatureC: -300 })],
  ])('refuses %s', (_, wrong) => {
    expect(() => requireTrace('pressureTrace', wrong)).toThrow(/^pressureTrace requires /)
  })
})
