import { fileURLToPath } from 'node:url'
import { defineConfig } from 'vitest/config'

const root = fileURLToPath(new URL('..', import.meta.url))
const jsx = { oxc: { jsx: { runtime: 'automatic', importSource: 'hono/jsx' } } } as const

/**
 * Two projects: `quick` (everything in this process) and `machine` (real servers, real Chromium,
 * kill -9), which runs file after file, since its files share two cores.
 */
export default defineConfig({
  root,
  test: {
    projects: [
      {
        ...jsx,
        root,
        test: {
          name: 'quick',
          include: ['tests/**/*.test.{ts,tsx}'],
          exclude: ['tests/browser/**', 'tests/machine/**'],
          setupFiles: ['tests/support/no-silent-console.ts'],
        },
      },
      {
        ...jsx,
        root,
        test: {
          name: 'machine',
          include: ['tests/browser/**/*.test.ts', 'tests/machine/**/*.test.ts'],
          globalSetup: ['tests/support/build-once.ts'],
          fileParallelism: false,
          testTimeout: 120_000,
          hookTimeout: 120_000,
        },
      },
    ],
    reporters: ['default', './tests/support/closing-line.ts'],
  },
})
