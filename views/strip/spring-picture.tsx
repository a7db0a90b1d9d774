import type { FC } from 'hono/jsx'
import type { CertifiedAssembly, CertifiedSpring } from '../../src/domain/certified-strip.ts'
import { type SpringLineOptions, springLine } from '../../src/plots/spring-line.ts'
import { SvgDrawing } from '../components/svg-drawing.tsx'
import { assemblyLineOf, springLineOf } from '../words/en/spring-line-texts.ts'
import { assemblyTexts, springTexts } from '../words/en/strip-texts.ts'
import { words } from '../words/en.ts'

const widthPx = 320

/** The line of springs with their working point. */
export const SpringPicture: FC<{ spring: CertifiedSpring; id: string }> = ({ spring, id }) => {
  const { read, follows } = springTexts(spring)
  return <Picture line={springLineOf(spring, widthPx)} id={id} told={[...read, ...follows]} />
}

/** The same for an assembly, with the load asked for. */
export const AssemblyPicture: FC<{ assembly: CertifiedAssembly; id: string }> = (props) => {
  const { assembly, id } = props
  const told = assemblyTexts(assembly).read
  return <Picture line={assemblyLineOf(assembly, widthPx)} id={id} told={told} />
}

const Picture: FC<{
  line: SpringLineOptions | null
  id: string
  told: readonly string[]
}> = ({ line, id, told }) => {
  if (line === null) return null
  const title = `${words.stripRecords.drawing.title}: ${told.join('; ')}`
  return (
    <figure>
      <SvgDrawing drawing={springLine(line)} id={id} title={title} />
    </figure>
  )
}
