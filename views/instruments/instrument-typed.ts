import type { instrumentFields } from '../../src/domain/parse-instrument.ts'

/** A new instrument as the form shows it, every part a text. */
export type InstrumentTyped = Readonly<Record<(typeof instrumentFields)[number], string>>
