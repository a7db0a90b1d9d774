import { expect, test } from 'vitest'
import { type InstrumentKind, instrumentKinds } from '../../../src/domain/instrument.ts'
import { instrumentCautions } from '../../../views/words/en/instrument-cautions.ts'

/** On a bench, away from pressure, heat and whatever turns. */
const harmless: readonly InstrumentKind[] = ['micrometer', 'profilometer', 'thermometer', 'balance']

test.each(instrumentKinds.filter((kind) => !harmless.includes(kind)))(
  '%s says what to mind, and that the rules of the site come first',
  (kind) => {
    const caution = instrumentCautions[kind]
    expect(caution?.title).toMatch(/\w/)
    expect(caution?.text.join(' ')).toContain('rules of your site')
  },
)

test('an indicator goes onto a machine that can start: lock it out first', () => {
  for (const kind of ['dial-indicator', 'lever-indicator'] as const) {
    expect(instrumentCautions[kind]?.text[0]).toMatch(
      /^Lock out and tag out.*check that nothing moves/,
    )
  }
})
