import { describe, expect, it } from 'vitest'
import { parseOrderNumber } from '../../src/domain/parse-order-number.ts'

describe('parseOrderNumber', () => {
  it.each([
    'W-2026-0042',
    'w-2026-42',
    '  W-2026-0042\t',
    'w 2026 0042',
    '2026-42',
    'W-42',
    'w42',
    '42',
    '0042',
  ])('reads "%s" as the number on the tag', (typed) => {
    expect(parseOrderNumber(typed, 2026)).toBe('W-2026-0042')
  })

  it('keeps a year that was typed, and grows beyond four digits', () => {
    expect(parseOrderNumber('w-2025-7', 2026)).toBe('W-2025-0007')
    expect(parseOrderNumber('12345', 2026)).toBe('W-2026-12345')
  })

  it.each(['', '   ', 'W-', 'W-26-42', 'C-2026-0042', 'S-204', '4.2', '-42', '42x', '1234567'])(
    'refuses "%s", which is no order number',
    (typed) => {
      expect(parseOrderNumber(typed, 2026)).toBeUndefined()
    },
  )
})
