import { join } from 'node:path'
import { pathToFileURL } from 'node:url'
import { projectRoot } from '../../../src/project-root.ts'

/**
 * A module of the build: what `npm start` runs, untouched by the loader that runs the benchmarks.
 * @param path of its source in the project, `src/store/open.ts`
 */
export async function importBuilt<Module>(path: string): Promise<Module> {
  const file = join(projectRoot(), '.build', path.replace(/\.tsx?$/, '.js'))
  return (await import(pathToFileURL(file).href)) as Module
}
