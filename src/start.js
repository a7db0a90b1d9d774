// The door for `npm start`, `npm run admin` and the build. Plain JavaScript, so that any Node can
// read it far enough to say which Node is needed.
import { spawnSync } from 'node:child_process'
import { existsSync, readdirSync, rmSync, statSync, writeFileSync } from 'node:fs'
import { dirname, join } from 'node:path'
import { fileURLToPath, pathToFileURL } from 'node:url'

const root = dirname(dirname(fileURLToPath(import.meta.url)))
const built = join(root, '.build')
const stamp = join(built, 'stamp')

if (Number(process.versions.node.split('.')[0]) !== 24) {
  process.stderr.write(
    `Ringproof runs on the Node 24 that it installs: start it with "npm start" or "npm run admin" (this is Node ${process.versions.node}).\n`,
  )
  process.exit(1)
}

const [verb, ...rest] = process.argv.slice(2)
if (isStale()) build()
if (verb === 'admin') {
  const { admin } = await import(pathToFileURL(join(built, 'src/admin/admin.js')).href)
  await admin(rest)
} else if (verb !== 'build') {
  await import(pathToFileURL(join(built, 'src/main.js')).href)
}

/** Stale: no build, or a source newer than it. */
function isStale() {
  if (!existsSync(stamp)) return true
  const builtAt = statSync(stamp).mtimeMs
  const lists = ['src', 'views', 'reports', 'fixtures/demo', 'migrations', 'package.json']
  return lists.some((path) => newest(join(root, path)) > builtAt)
}

/** @param {string} path @returns {number} */
function newest(path) {
  if (!existsSync(path)) return 0
  const stat = statSync(path)
  if (!stat.isDirectory()) return stat.mtimeMs
  return Math.max(stat.mtimeMs, ...readdirSync(path).map((name) => newest(join(path, name))))
}

function build() {
  rmSync(built, { recursive: true, force: true })
  const tsc = join(root, 'node_modules/@typescript/native/bin/tsc')
  const run = spawnSync(process.execPath, [tsc, '-p', join(root, 'src/tsconfig.build.json')], {
    stdio: 'inherit',
  })
  if (run.status !== 0) {
    process.stderr.write('Ringproof could not be built: see the lines above.\n')
    process.exit(1)
  }
  const demo = join(built, 'fixtures/demo/draw-store.js')
  if (existsSync(demo)) {
    const drawn = spawnSync(process.execPath, [demo], { stdio: 'inherit' })
    if (drawn.status !== 0) process.exit(1)
  }
  writeFileSync(stamp, '')
}
