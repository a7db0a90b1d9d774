import type { Reporter, TestModule } from 'vitest/node'

/** Prints `N passed, N failed` as the last line, which the gate reads. */
export default class ClosingLine implements Reporter {
  onTestRunEnd(modules: ReadonlyArray<TestModule>, errors: ReadonlyArray<unknown>): void {
    let passed = 0
    let failed = errors.length
    let skipped = 0
    for (const module of modules) {
      if (module.state() === 'failed' && [...module.children.allTests()].length === 0) failed++
      for (const test of module.children.allTests()) {
        const state = test.result().state
        if (state === 'passed') passed++
        else if (state === 'failed') failed++
        else skipped++
      }
    }
    if (skipped > 0) failed += skipped // a skipped test counts as failed: nothing is skipped silently
    process.on('exit', () => process.stdout.write(`\n${passed} passed, ${failed} failed\n`))
    if (passed === 0 || failed > 0) process.exitCode = 1
  }
}
