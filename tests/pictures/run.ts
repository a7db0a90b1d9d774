import { writeFileSync } from 'node:fs'
import { join } from 'node:path'
import type { Browser } from 'playwright-core'
import { demoAccounts } from '../../fixtures/demo/accounts.ts'
import { projectRoot } from '../../src/project-root.ts'
import { launchBrowser, signIn, sizes, watch } from '../support/browser.ts'
import buildOnce from '../support/build-once.ts'
import { type DemoServer, startDemo } from '../support/demo-server.ts'
import { drawFirstPage } from './first-page.ts'
import { palettePng } from './palette-png.ts'
import { type Scene, scenes } from './scenes.ts'

/** More would make every clone slower. */
const largestBytes = 200_000
const folder = join(projectRoot(), 'views/pictures')

buildOnce()
const server = await startDemo()
const browser = await launchBrowser()
try {
  for (const scene of scenes) keep(scene.file, await take(browser, server, scene))
  const page = await drawFirstPage(server)
  if (page === undefined) {
    say('certificate.png is left as it is: pdftoppm, which would draw it, is not installed')
  } else keep('certificate.png', page)
} finally {
  await browser.close()
  await server.stop()
}

async function take(browser: Browser, server: DemoServer, scene: Scene): Promise<Buffer> {
  const context = await browser.newContext({
    viewport: sizes[scene.size],
    reducedMotion: 'reduce',
    locale: 'en-GB',
    timezoneId: 'Europe/London',
  })
  const page = await context.newPage()
  const faults = watch(page)
  const account = demoAccounts.find((one) => one.name === scene.who)
  if (account === undefined) throw new Error(`nobody is named ${scene.who}`)
  await signIn(page, server.origin, account)
  await context.addCookies([{ name: 'ringproof-view', value: scene.view, url: server.origin }])
  await scene.show(page, server)
  await page.mouse.move(0, 0)
  await page.evaluate(() => document.fonts.ready)
  const picture = await page.screenshot({ animations: 'disabled', caret: 'hide' })
  await context.close()
  if (faults.length > 0) throw new Error(`${scene.file}: ${faults.join('; ')}`)
  return picture
}

function keep(file: string, png: Buffer): void {
  const picture = palettePng(png)
  if (picture.length > largestBytes) {
    throw new Error(`${file} would have ${picture.length} bytes, more than ${largestBytes}`)
  }
  writeFileSync(join(folder, file), picture)
  say(`${file}  ${Math.round(picture.length / 1000)} kB`)
}

function say(line: string): void {
  process.stdout.write(`${line}\n`)
}
