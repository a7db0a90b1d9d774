import { existsSync, readFileSync } from 'node:fs'
import { dirname, join } from 'node:path'
import { fileURLToPath } from 'node:url'

export type FontName = 'regular' | 'strong'

const fileNames: Readonly<Record<FontName, string>> = {
  regular: 'SourceSans3-Regular.ttf',
  strong: 'SourceSans3-SemiBold.ttf',
}

const read = new Map<FontName, Buffer>()

/**
 * The bytes of a font that documents embed. The fonts stay in the project's own folder also when
 * the compiled copy of this file runs from a build folder, so the project's root is looked for
 * upwards from here.
 * @throws Error when no folder above holds a package.json with the fonts beside it
 */
export function fontFile(name: FontName): Buffer {
  const known = read.get(name)
  if (known !== undefined) return known
  const bytes = readFileSync(join(projectFolder(), 'reports', 'fonts', fileNames[name]))
  read.set(name, bytes)
  return bytes
}

function projectFolder(): string {
  let folder = dirname(fileURLToPath(import.meta.url))
  while (!existsSync(join(folder, 'package.json'))) {
    const above = dirname(folder)
    if (above === folder) throw new Error('fontFile found no package.json above its own folder')
    folder = above
  }
  return folder
}
