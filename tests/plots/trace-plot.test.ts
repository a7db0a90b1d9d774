import { describe, expect, it } from 'vitest'
import { tracePlot } from '../../src/plots/trace-plot.ts'

const options = {
  fromS: 0,
  toS: 3600,
  fitted: null,
  widthPx: 720,
  texts: { title: 'Torque', least: (value: number) => value.toFixed(1), from: '0 s', to: '1 h' },
}
const texts = (drawing: ReturnType<typeof tracePlot>) =>
  drawing.shapes.flatMap((one) => (one.kind === 'text' ? [one.text] : []))

describe('a trace over time', () => {
  it('shows the one peak of a hundred thousand readings', () => {
    const timesS = Float64Array.from({ length: 100_000 }, (_, i) => i * 0.036)
    const values = new Float64Array(100_000).fill(2)
    values[54_321] = 9
    const drawing = tracePlot({ ...options, timesS, values })
    expect(texts(drawing)).toEqual(['Torque', '9.0', '2.0', '0 s', '1 h'])
    const path = drawing.shapes.find((one) => one.kind === 'path' && one.stroke === 'ink')
    expect(path?.kind === 'path' ? path.d : '').toContain(' 26')
    expect(path?.kind === 'path' ? path.d.length : 0).toBeLessThan(20_000)
  })

  it('draws what is fitted within its frame, and nothing of nothing', () => {
    const fitted = { fromValue: 0, toValue: 10 }
    const drawing = tracePlot({ ...options, timesS: [0, 3600], values: [4, 5], fitted })
    expect(drawing.shapes.find((one) => one.kind === 'line')).toMatchObject({ y1: 156, y2: 26 })
    const none = tracePlot({ ...options, timesS: [], values: [] })
    expect(none.shapes.filter((one) => one.kind === 'path')).toHaveLength(1)
    expect(texts(none)).toEqual(['Torque', '0 s', '1 h'])
  })

  it('stays within its sheet for readings all alike, and refuses a sheet that is none', () => {
    const alike = tracePlot({ ...options, timesS: [0, 10], values: [5, 5] })
    expect(texts(alike)).toContain('5.0')
    expect(() => tracePlot({ ...options, timesS: [], values: [], widthPx: 10 })).toThrow('widthPx')
  })
})
