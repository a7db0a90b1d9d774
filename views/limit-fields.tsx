import type { FC } from 'hono/jsx'
import { characteristics } from '../src/domain/characteristic.ts'
import type { Fault } from '../src/domain/fault.ts'
import type { LimitEntry } from '../src/domain/limit-entry.ts'
import { limitBases } from '../src/domain/limit-set.ts'
import { limitUnits, startUnits } from '../src/domain/limit-unit.ts'
import { faceMaterials } from '../src/domain/seal.ts'
import { CheckField } from './components/check-field.tsx'
import { Field } from './components/field.tsx'
import { SelectField } from './components/select-field.tsx'
import { ownErrorOf } from './own-error-of.ts'
import { limitSetSentences } from './words/en/limit-sets.ts'
import { tradeWord } from './words/en/trade.ts'
import { words } from './words/en.ts'

type Name = keyof LimitEntry

/** One limit of the form, folded to its name; open where something is wrong in it. */
export const LimitFields: FC<{
  entry: LimitEntry
  index: number
  faults: readonly Fault[]
}> = ({ entry, index, faults }) => {
  const { limitSets: w, trade } = words
  const at = (name: Name) => {
    const field = `limits[${index}].${name}`
    return { name: field, value: entry[name], ...ownErrorOf(faults, field, limitSetSentences) }
  }
  const isFaulty = faults.some((one) => one.field.startsWith(`limits[${index}].`))
  return (
    <details class="fold" open={isFaulty}>
      <summary>{w.limit(index + 1, nameOf(entry))}</summary>
      <div class="fold-body stack">
        <div class="field-pair">
          <SelectField
            {...at('characteristic')}
            label={w.characteristic}
            emptyLabel={w.choose}
            options={options(characteristics, trade.characteristic)}
          />
          <SelectField
            {...at('faceMaterial')}
            label={w.material}
            hint={w.materialHint}
            emptyLabel={w.everyFace}
            options={options(faceMaterials, trade.faceMaterial)}
          />
        </div>
        <div class="field-pair">
          <Field {...at('upper')} label={w.upper} inputMode="decimal" width="number" />
          <SelectField
            {...at('unit')}
            label={w.unit}
            emptyLabel={w.choose}
            options={options(limitUnits, w.units)}
          />
        </div>
        <div class="field-pair">
          <Field
            {...at('withinS')}
            label={w.withinS}
            hint={w.withinHint}
            unit={trade.unit.s}
            inputMode="decimal"
            width="number"
          />
          <Field
            {...at('volumeAtMostL')}
            label={w.volume}
            hint={w.volumeHint}
            unit={trade.unit.l}
            inputMode="decimal"
            width="number"
          />
        </div>
        <div class="field-pair">
          <Field
            {...at('startAtLeast')}
            label={w.startAtLeast}
            hint={w.startHint}
            inputMode="decimal"
            width="number"
          />
          <SelectField
            {...at('startUnit')}
            label={w.startUnit}
            emptyLabel={w.choose}
            options={options(startUnits, w.startUnits)}
          />
        </div>
        <Field {...at('asWritten')} label={w.asWritten} hint={w.asWrittenHint} />
        <SelectField
          {...at('basis')}
          label={w.basis}
          emptyLabel={w.choose}
          options={options(limitBases, trade.limitBasis)}
        />
        <Field {...at('source')} label={w.source} hint={w.sourceHint} />
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

function options<Id extends string>(ids: readonly Id[], named: Readonly<Record<Id, string>>) {
  return ids.map((value) => ({ value, label: named[value] }))
}

/** What the fold is called while it is closed: the limit as it is written, and what it is for. */
function nameOf(entry: LimitEntry): string {
  const { limitSets, trade } = words
  if (entry.characteristic === '') return limitSets.another
  const material =
    entry.faceMaterial === '' ? [] : [tradeWord(trade.faceMaterial, entry.faceMaterial)]
  const written = entry.asWritten === '' ? [] : [entry.asWritten]
  return [tradeWord(trade.characteristic, entry.characteristic), ...material, ...written].join(
    ' · ',
  )
}
