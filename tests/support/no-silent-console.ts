import { afterEach, expect, vi } from 'vitest'

// Nothing is logged and continued: a test during which console.error is called fails.
const spy = vi.spyOn(console, 'error').mockImplementation(() => undefined)

afterEach(() => {
  const calls = spy.mock.calls.slice()
  spy.mockClear()
  expect(calls, 'console.error was called').toEqual([])
})
