import type { FC } from 'hono/jsx'
import type { Fault } from '../../src/domain/fault.ts'
import { Field } from '../components/field.tsx'
import { words } from '../words/en.ts'
import type { FacePhotoValues } from './form-values.ts'
import { photoSentence } from './photo-fault.ts'

const parts = ['cx', 'cy', 'rx', 'ry', 'rotationDeg'] as const

/** Both edges in numbers: what the rings on the photograph are drawn from. */
export const EdgeFields: FC<{
  values: FacePhotoValues
  faults: readonly Fault[]
  areFound: boolean
}> = ({ values, faults, areFound }) => {
  const w = words.facePhoto
  const isFaulty = faults.some((one) => /^(outer|inner)/.test(one.field))
  return (
    <>
      <p>{areFound ? w.edgesFound : w.edgesNotFound}</p>
      <details class="fold" open={isFaulty}>
        <summary>{w.edgesFold}</summary>
        <div class="fold-body stack">
          <p class="field-hint">{w.edgesHint}</p>
          {(['outer', 'inner'] as const).map((edge) => (
            <fieldset class="photo-numbers">
              <legend class="strong">{w[edge]}</legend>
              {parts.map((part) => {
                const name = `${edge}.${part}`
                const fault = faults.find(
                  (one) => one.field === name || (one.field === edge && part === 'cx'),
                )
                return (
                  <Field
                    name={name}
                    label={w.edge[part]}
                    value={values[edge][part]}
                    inputMode="decimal"
                    width="number"
                    unit={part === 'rotationDeg' ? words.trade.unit.deg : w.px}
                    {...(fault === undefined ? {} : { error: photoSentence(fault) })}
                  />
                )
              })}
            </fieldset>
          ))}
        </div>
      </details>
    </>
  )
}
