// The door for `npm start`, `npm run admin` and the build. Plain JavaScript, so that any Node can
// read it far enough to say which Node is needed.
import { spawnSync } from 'node:child_process'
import {
  existsSync,
  readdirSync,
  readFileSync,
  rmSync,
  statSync,
  utimesSync,
  writeFileSync,
} from 'node:fs'
import { dirname, join } from 'node:path'
import { fileURLToPath, pathToFileURL } from 'node:url'

const root = dirname(dirname(fileURLToPath(import.meta.url)))
const built = join(root, '.build')
const stamp = join(built, 'stamp')
const demo = join(built, 'demo.sqlite')
const lock = join(root, '.build.lock')

if (Number(process.versions.node.split('.')[0]) !== 24) {
  process.stderr.write(
    `Ringproof runs on the Node 24 that it installs: start it with "npm start" or "npm run admin" (this is Node ${process.versions.node}).\n`,
  )
  process.exit(1)
}

const [verb, ...rest] = process.argv.slice(2)
if (isStale()) await buildAlone()
if (verb === 'admin') {
  const { admin } = await import(pathToFileURL(join(built, 'run/admin.js')).href)
  await admin(rest)
} else if (verb !== 'build') {
  await import(pathToFileURL(join(built, 'run/main.js')).href)
}

/** Stale: no build, or a source newer than it. */
function isStale() {
  const sources = ['src', 'views', 'reports', 'fixtures/demo', 'migrations', 'package.json']
  return isOlder(stamp, sources)
}

/** What the invented workshop is drawn from: a new button need not draw its certificates again. */
function isDemoStale() {
  const science = ['src/science', 'src/domain', 'src/plots', 'src/store', 'src/web/inspection']
  const document = ['reports', 'views/words/en/certificate.ts', 'fixtures/demo', 'migrations']
  return isOlder(demo, [...science, ...document])
}

/** @param {string} file @param {string[]} sources */
function isOlder(file, sources) {
  if (!existsSync(file)) return true
  const madeAt = statSync(file).mtimeMs
  return sources.some((path) => newest(join(root, path)) > madeAt)
}

/** @param {string} path @returns {number} */
function newest(path) {
  if (!existsSync(path)) return 0
  const stat = statSync(path)
  if (!stat.isDirectory()) return stat.mtimeMs
  return Math.max(stat.mtimeMs, ...readdirSync(path).map((name) => newest(join(path, name))))
}

/** One build at a time: a start and a command given together would tread on each other. */
async function buildAlone() {
  while (!holds()) Atomics.wait(new Int32Array(new SharedArrayBuffer(4)), 0, 0, 100)
  process.once('exit', release)
  if (isStale()) await build()
  release()
  process.removeListener('exit', release)
}

/** Takes the lock where nobody holds it; who was killed while building holds it no longer. */
function holds() {
  try {
    writeFileSync(lock, String(process.pid), { flag: 'wx' })
    return true
  } catch {
    if (!isAlive(holder())) release()
    return false
  }
}

function release() {
  rmSync(lock, { force: true })
}

/** Who builds; 0 where that can't be told at this moment. */
function holder() {
  try {
    return Number(readFileSync(lock, 'utf8'))
  } catch {
    return 0 // just released
  }
}

/** @param {number} pid */
function isAlive(pid) {
  if (pid === 0) return true
  try {
    process.kill(pid, 0)
    return true
  } catch {
    return false
  }
}

async function build() {
  const begunAt = new Date()
  for (const part of ['stamp', 'src', 'views', 'reports', 'fixtures', 'run']) {
    rmSync(join(built, part), { recursive: true, force: true })
  }
  const tsc = join(root, 'node_modules/@typescript/native/bin/tsc')
  run([tsc, '-p', join(root, 'src/tsconfig.build.json')])
  await bundle()
  if (isDemoStale()) run([join(built, 'fixtures/demo/draw-store.js')])
  writeFileSync(stamp, '')
  // What was edited while the build ran is newer than it.
  utimesSync(stamp, begunAt, begunAt)
}

/** A few files instead of a thousand: the start then takes a fifth of the time. */
async function bundle() {
  const esbuild = await import('esbuild')
  await esbuild.build({
    entryPoints: {
      main: join(built, 'src/main.js'),
      admin: join(built, 'src/admin/admin.js'),
      'monte-carlo': join(built, 'src/workers/monte-carlo.js'),
      photo: join(built, 'src/workers/photo.js'),
    },
    outdir: join(built, 'run'),
    bundle: true,
    splitting: true,
    platform: 'node',
    format: 'esm',
    target: 'node24',
    logLevel: 'warning',
    // These bring a binary or read files of their own beside their code.
    external: ['better-sqlite3', '@node-rs/argon2', 'pdfkit', 'sharp'],
  })
}

/** @param {string[]} args */
function run(args) {
  if (spawnSync(process.execPath, args, { stdio: 'inherit' }).status === 0) return
  process.stderr.write('Ringproof could not be built: see the lines above.\n')
  process.exit(1)
}
