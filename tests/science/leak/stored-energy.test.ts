import { describe, expect, it } from 'vitest'
import { storedEnergy } from '../../../src/science/leak/stored-energy.ts'

describe('the energy of gas under pressure', () => {
  it('is that of the worked example', () => {
    // E24 of the facts: 1.7 bar gauge in 28 L; printed to 1 J.
    const { energyJ, tntKg } = storedEnergy({ pressureKPaAbs: 271.325, volumeL: 28 })
    expect(energyJ).toBeCloseTo(4659, 0)
    expect(tntKg).toBeCloseTo(4658.765 / 4_266_920, 9)
    // The same page prints 4676 J with an exponent rounded to 0.286 and 101.0 kPa: 0.1 % more.
    const at101 = storedEnergy({ pressureKPaAbs: 271.325, volumeL: 28, ambientKPaAbs: 101 })
    expect(at101.energyJ / 4676).toBeCloseTo(1, 2)
  })

  it('is the work that the gas does on its way out, by small steps', () => {
    for (const gamma of [1.1, 1.4, 1.67]) {
      const [p, v] = [600, 3]
      let [energy, volume, pressure] = [0, v, p]
      const steps = 200_000
      const end = v * (p / 101.325) ** (1 / gamma)
      const dv = (end - v) / steps
      for (let i = 0; i < steps; i++) {
        const middle = p * (v / (volume + dv / 2)) ** gamma
        energy += middle * dv
        volume += dv
        pressure = p * (v / volume) ** gamma
      }
      expect(pressure).toBeCloseTo(101.325, 6)
      const { energyJ } = storedEnergy({ pressureKPaAbs: p, volumeL: v, gamma })
      expect(energyJ / energy).toBeCloseTo(1, 8)
    }
  })

  it('keeps its digits for a small overpressure, and is nothing without one', () => {
    // p V ln(p / ambient) to first order.
    const small = storedEnergy({ pressureKPaAbs: 101.325 * (1 + 1e-9), volumeL: 1 })
    expect(small.energyJ / (101.325e-9 / 1.4)).toBeCloseTo(1, 6)
    expect(storedEnergy({ pressureKPaAbs: 101.325, volumeL: 28 })).toEqual({ energyJ: 0, tntKg: 0 })
    expect(storedEnergy({ pressureKPaAbs: 20, volumeL: 28 }).energyJ).toBe(0)
  })

  it.each([
    [{ pressureKPaAbs: -1 }, 'pressureKPaAbs'],
    [{ volumeL: Number.NaN }, 'volumeL'],
    [{ gamma: 1 }, 'gamma'],
    [{ ambientKPaAbs: 0 }, 'ambientKPaAbs'],
  ])('refuses %j', (change, field) => {
    expect(() => storedEnergy({ pressureKPaAbs: 300, volumeL: 1, ...change })).toThrow(field)
  })
})
