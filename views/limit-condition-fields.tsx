import type { FC } from 'hono/jsx'
import { limitServices } from '../src/domain/parse-limit-conditions.ts'
import { pressureUnits } from '../src/domain/pressure-units.ts'
import { faceKinds, faceMaterials } from '../src/domain/seal.ts'
import { Field } from './components/field.tsx'
import { SelectField } from './components/select-field.tsx'
import type { LimitFieldAt } from './limit-field-at.ts'
import { selectOptions } from './select-options.ts'
import { words } from './words/en.ts'

/** What a limit holds for; each of them may be left empty. */
export const LimitConditionFields: FC<{ at: LimitFieldAt }> = ({ at }) => {
  const { limitForms: w, limitSets, trade } = words
  const perMin = w.perMin
  const number = { inputMode: 'decimal', width: 'number' } as const
  return (
    <>
      <div class="field-pair">
        <SelectField
          {...at('faceMaterial')}
          label={w.material}
          emptyLabel={w.anyMaterial}
          options={selectOptions(faceMaterials, trade.faceMaterial)}
        />
        <SelectField
          {...at('componentKind')}
          label={w.component}
          emptyLabel={w.anyComponent}
          options={selectOptions(faceKinds, trade.faceKind)}
        />
        <SelectField
          {...at('service')}
          label={w.service}
          emptyLabel={w.anyService}
          options={selectOptions(limitServices, trade.service)}
        />
      </div>
      <div class="field-pair">
        <Field {...at('diameterOverMm')} label={w.diameterOver} unit={trade.unit.mm} {...number} />
        <Field {...at('diameterUpToMm')} label={w.diameterUpTo} unit={trade.unit.mm} {...number} />
      </div>
      <div class="field-pair">
        <Field {...at('pressureOver')} label={w.pressureOver} {...number} />
        <Field {...at('pressureUpTo')} label={w.pressureUpTo} {...number} />
        <SelectField
          {...at('pressureUnit')}
          label={w.pressureUnit}
          emptyLabel={w.choose}
          options={selectOptions(pressureUnits, limitSets.pressureUnits)}
        />
      </div>
      <div class="field-pair">
        <Field {...at('speedOverPerMin')} label={w.speedOver} unit={perMin} {...number} />
        <Field {...at('speedUpToPerMin')} label={w.speedUpTo} unit={perMin} {...number} />
      </div>
    </>
  )
}
