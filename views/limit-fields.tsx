import type { Child, FC } from 'hono/jsx'
import { type Characteristic, characteristics } from '../src/domain/characteristic.ts'
import type { Fault } from '../src/domain/fault.ts'
import { type LimitEntry, withinUnits } from '../src/domain/limit-entry.ts'
import { limitBases, perMmSizes } from '../src/domain/limit-set.ts'
import { limitUnits } from '../src/domain/limit-unit.ts'
import { limitUnitsOf } from '../src/domain/limit-units-of.ts'
import { pressureUnits } from '../src/domain/pressure-units.ts'
import { CheckField } from './components/check-field.tsx'
import { Field } from './components/field.tsx'
import { SelectField } from './components/select-field.tsx'
import { LimitConditionFields } from './limit-condition-fields.tsx'
import { limitEntryTitle } from './limit-entry-title.ts'
import type { LimitFieldAt } from './limit-field-at.ts'
import { ownErrorOf } from './own-error-of.ts'
import { selectOptions } from './select-options.ts'
import { limitSetSentences } from './words/en/limit-forms.ts'
import { words } from './words/en.ts'

/** One limit of the form, folded to its name; open where something is wrong in it. */
export const LimitFields: FC<{
  entry: LimitEntry
  index: number
  faults: readonly Fault[]
}> = ({ entry, index, faults }) => {
  const w = words.limitForms
  const at: LimitFieldAt = (name) => {
    const field = `limits[${index}].${name}`
    return { name: field, value: entry[name], ...ownErrorOf(faults, field, limitSetSentences) }
  }
  const isFaulty = faults.some((one) => one.field.startsWith(`limits[${index}].`))
  return (
    <details class="fold" open={isFaulty}>
      <summary>{w.limit(index + 1, limitEntryTitle(entry))}</summary>
      <div class="fold-body stack-loose">
        <Part title={w.limitPart}>
          <NumberFields at={at} characteristic={entry.characteristic} />
        </Part>
        <Part title={w.conditionsPart} hint={w.conditionsHint}>
          <LimitConditionFields at={at} />
        </Part>
        <Part title={w.holdPart} hint={w.holdHint}>
          <HoldFields at={at} />
        </Part>
        <Part title={w.foundedPart}>
          <SourceFields at={at} />
        </Part>
        <CheckField
          name={`limits[${index}].leaveOut`}
          label={w.leaveOut}
          value="yes"
          isChecked={entry.leaveOut !== ''}
        />
      </div>
    </details>
  )
}

const Part: FC<{ title: string; hint?: string; children: Child }> = (props) => (
  <fieldset class="stack">
    <legend class="strong">{props.title}</legend>
    {props.hint === undefined ? null : <p class="field-hint">{props.hint}</p>}
    {props.children}
  </fieldset>
)

const NumberFields: FC<{ at: LimitFieldAt; characteristic: string }> = (props) => {
  const { at, characteristic } = props
  const { limitForms: w, limitSets, trade } = words
  return (
    <>
      <SelectField
        {...at('characteristic')}
        label={w.characteristic}
        emptyLabel={w.choose}
        options={selectOptions(characteristics, trade.characteristic)}
      />
      <div class="field-pair">
        <Field {...at('upper')} label={w.upper} inputMode="decimal" width="number" />
        <Field {...at('lower')} label={w.lower} inputMode="decimal" width="number" />
        <SelectField
          {...at('unit')}
          label={w.unit}
          emptyLabel={w.choose}
          options={selectOptions(fittingFirst(characteristic), limitSets.units)}
        />
        <SelectField
          {...at('perMmOf')}
          label={w.perMmOf}
          emptyLabel={w.choose}
          options={selectOptions(perMmSizes, w.perMmSizes)}
        />
      </div>
    </>
  )
}

/** Every unit, those of what is limited before the others: it may still be changed. */
function fittingFirst(characteristic: string) {
  const known = characteristics.find((one): one is Characteristic => one === characteristic)
  const fitting = known === undefined ? [] : limitUnitsOf(known)
  return [...fitting, ...limitUnits.filter((one) => !fitting.includes(one))]
}

const HoldFields: FC<{ at: LimitFieldAt }> = ({ at }) => {
  const { limitForms: w, trade } = words
  return (
    <div class="field-pair">
      <Field {...at('within')} label={w.within} inputMode="decimal" width="number" />
      <SelectField
        {...at('withinUnit')}
        label={w.withinUnit}
        emptyLabel={w.choose}
        options={selectOptions(withinUnits, w.withinUnits)}
      />
      <Field {...at('startAtLeast')} label={w.startAtLeast} inputMode="decimal" width="number" />
      <SelectField
        {...at('startUnit')}
        label={w.startUnit}
        emptyLabel={w.choose}
        options={selectOptions(pressureUnits, w.startUnits)}
      />
      <Field
        {...at('volumeAtMostL')}
        label={w.volume}
        unit={trade.unit.l}
        inputMode="decimal"
        width="number"
      />
    </div>
  )
}

const SourceFields: FC<{ at: LimitFieldAt }> = ({ at }) => {
  const { limitForms: w, trade } = words
  return (
    <>
      <Field {...at('asWritten')} label={w.asWritten} hint={w.asWrittenHint} />
      <SelectField
        {...at('basis')}
        label={w.basis}
        emptyLabel={w.choose}
        options={selectOptions(limitBases, trade.limitBasis)}
      />
      <Field {...at('source')} label={w.source} hint={w.sourceHint} />
      <div class="field-pair">
        <Field {...at('edition')} label={w.edition} hint={w.optionalHint} />
        <Field {...at('clause')} label={w.clause} hint={w.optionalHint} />
      </div>
    </>
  )
}
