import type { FC } from 'hono/jsx'
import type { Fault } from '../src/domain/fault.ts'
import { type ComponentKind, componentKinds, faceKinds, faceMaterials } from '../src/domain/seal.ts'
import { sealSection } from '../src/plots/seal-section.ts'
import { Field } from './components/field.tsx'
import { SelectField } from './components/select-field.tsx'
import { SvgDrawing } from './components/svg-drawing.tsx'
import { errorOf } from './error-of.ts'
import { words } from './words/en.ts'

type Texts = Readonly<Record<string, string>>
type PartProps = {
  readonly kind: ComponentKind
  readonly place: number
  readonly typed: Texts
  readonly faults: readonly Fault[]
}

const w = words.customers.seal

/** The five components, each pointed out in the section; a blank one is not there. */
export const SealComponentsFields: FC<{
  typed: readonly Texts[]
  faults: readonly Fault[]
  error?: string
}> = ({ typed, faults, error }) => (
  <section class="stack" id="components">
    <h2>{w.components}</h2>
    <p>{w.componentsLead}</p>
    {error === undefined ? null : <p class="field-error">{error}</p>}
    {componentKinds.map((kind, place) => (
      <Part kind={kind} place={place} typed={typed[place] ?? {}} faults={faults} />
    ))}
  </section>
)

const Part: FC<PartProps> = (props) => {
  const { kind, place, typed, faults } = props
  const name = `components[${place}].material`
  const isFace = faceKinds.some((one) => one === kind)
  return (
    <fieldset class="card">
      <legend class="part-name">{words.trade.componentKind[kind]}</legend>
      <div class="part">
        <SvgDrawing drawing={sealSection({ widthPx: 200, highlight: kind })} />
        {isFace ? (
          <div>
            <SelectField
              name={name}
              label={w.material}
              emptyLabel={w.noMaterial}
              value={typed.material}
              options={faceMaterials.map((value) => {
                return { value, label: words.trade.faceMaterial[value] }
              })}
              {...errorOf(faults, name)}
            />
            <FaceDimensions {...props} />
          </div>
        ) : (
          <Field name={name} label={w.material} value={typed.material} {...errorOf(faults, name)} />
        )}
      </div>
    </fieldset>
  )
}

const FaceDimensions: FC<PartProps> = (props) => (
  <div class="part-sizes">
    <Dimension {...props} field="outerDiameterMm" label={w.outer} />
    <Dimension {...props} field="innerDiameterMm" label={w.inner} />
    <Dimension {...props} field="noseHeightMm" label={w.nose} />
    <Dimension {...props} field="minimumNoseHeightMm" label={w.leastNose} hint={w.leastNoseHint} />
  </div>
)

const Dimension: FC<PartProps & { field: string; label: string; hint?: string }> = (props) => {
  const { place, typed, faults, field, label, hint } = props
  const name = `components[${place}].${field}`
  return (
    <Field
      name={name}
      label={label}
      hint={hint}
      unit={words.trade.unit.mm}
      value={typed[field]}
      inputMode="decimal"
      width="number"
      {...errorOf(faults, name)}
    />
  )
}
