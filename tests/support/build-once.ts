import { spawnSync } from 'node:child_process'
import { fileURLToPath } from 'node:url'

/** Builds what the machine tests start, once for a run, by the door that `npm start` uses. */
export default function buildOnce(): void {
  const root = fileURLToPath(new URL('../..', import.meta.url))
  const run = spawnSync(process.execPath, ['src/start.js', 'build'], {
    cwd: root,
    encoding: 'utf8',
  })
  if (run.status !== 0) throw new Error(`the build failed:\n${run.stdout}${run.stderr}`)
}
