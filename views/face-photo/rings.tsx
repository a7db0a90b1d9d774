import type { FC } from 'hono/jsx'
import type { EdgeValues, FacePhotoValues } from './form-values.ts'

/** Both edges as typed, drawn for whoever has no script; with one they are drawn anew. */
export const Rings: FC<{ values: Pick<FacePhotoValues, 'outer' | 'inner'> }> = ({ values }) => (
  <g data-edges="">
    {(['outer', 'inner'] as const).map((name) => (
      <Ring name={name} edge={values[name]} />
    ))}
  </g>
)

const Ring: FC<{ name: 'outer' | 'inner'; edge: EdgeValues }> = ({ name, edge }) => {
  const parts = [edge.cx, edge.cy, edge.rx, edge.ry, edge.rotationDeg]
  const given = parts.map((text) => Number(text.trim().replace(',', '.') || 'none'))
  const [cx = 0, cy = 0, rx = 0, ry = 0, rotationDeg = 0] = given
  if (!given.every(Number.isFinite) || rx <= 0 || ry <= 0) return null
  const shape = { cx, cy, rx, ry, transform: `rotate(${-rotationDeg} ${cx} ${cy})` }
  return (
    <>
      <ellipse class={`photo-ring-under photo-ring-under-${name}`} {...shape} />
      <ellipse class={`photo-ring photo-ring-${name}`} {...shape} />
    </>
  )
}
