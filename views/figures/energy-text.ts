import { figure } from '../../src/domain/figure.ts'
import type { PlannedStaticTest } from '../../src/domain/plan-static-test.ts'
import { words } from '../words/en.ts'

/** `4.66 kJ, as much as 1.09 g of TNT`; nothing of the latter below a tenth of a gram. */
export function energyText({ energyJ, tntKg }: PlannedStaticTest['energy']): string {
  const w = words.staticTests.plan
  const digits = { digits: 3 }
  const text =
    energyJ < 1000
      ? w.joule(figure(energyJ, energyJ === 0 ? { decimals: 0 } : digits).text)
      : w.kilojoule(figure(energyJ / 1000, digits).text)
  return tntKg < 0.0001 ? text : w.asTnt(text, figure(tntKg * 1000, digits).text)
}
