import { execFileSync } from 'node:child_process'
import { writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { pathToFileURL } from 'node:url'
import { projectRoot } from '../../../src/project-root.ts'
import { environmentOf } from '../../support/machine.ts'
import { faceRecord } from '../../support/synthetic-faces/face-record.ts'
import { syntheticFace } from '../../support/synthetic-faces/synthetic-face.ts'

const widthPx = 4000

/** Megabytes that a process of its own takes at most to read a photograph of 12 megapixels. */
export async function photoMemoryMb(folder: string): Promise<number> {
  const { jpeg, recipe } = await syntheticFace(5, 'core', widthPx)
  const { clicks } = faceRecord(recipe)
  const photo = join(folder, 'large.jpg')
  const edges = join(folder, 'edges.json')
  writeFileSync(photo, jpeg)
  writeFileSync(edges, JSON.stringify(clicks))
  const built = (path: string) => pathToFileURL(join(projectRoot(), '.build', path)).href
  const program = `
    import { readFileSync } from 'node:fs'
    import { decodePhoto } from ${JSON.stringify(built('src/workers/decode-photo.js'))}
    import { readScaledPhoto } from ${JSON.stringify(built('src/science/photo/read-scaled-photo.js'))}
    const edges = JSON.parse(readFileSync(${JSON.stringify(edges)}, 'utf8'))
    const scale = 600 / ${recipe.camera.radiusPx}
    const decoded = await decodePhoto(readFileSync(${JSON.stringify(photo)}), scale)
    if ('fault' in decoded) throw new Error(decoded.fault)
    readScaledPhoto(decoded.picture, decoded.scale, edges)
    process.stdout.write(String(process.resourceUsage().maxRSS))`
  const printed = execFileSync(process.execPath, ['--input-type=module', '-e', program], {
    encoding: 'utf8',
    env: environmentOf({}),
  })
  return Number(printed) / 1024
}
