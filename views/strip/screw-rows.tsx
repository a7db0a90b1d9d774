import type { FC } from 'hono/jsx'
import { assemblyBounds } from '../../src/domain/assembly.ts'
import { Field } from '../components/field.tsx'
import { words } from '../words/en.ts'
import { BenchNumber, type BenchTyped, benchProps } from './bench-fields.tsx'
import { rowsShown } from './rows-shown.ts'

const screwRows = { least: 4, most: assemblyBounds.lineCount.max }

const w = words.assembly.screws

/** Each kind of screws a row: the first stands open, the others fold away while they are empty. */
export const ScrewRows: FC<{ typed: BenchTyped }> = ({ typed }) => (
  <>
    {Array.from({ length: rowsShown(typed, 'setScrews', screwRows) }, (_, index) => {
      if (index === 0) return <ScrewRow typed={typed} index={index} />
      const isUsed = Object.entries(typed.values).some(
        ([name, value]) => name.startsWith(`setScrews[${index}]`) && value !== '',
      )
      return (
        <details class="fold" open={isUsed}>
          <summary>{words.assembly.moreScrews(index + 1)}</summary>
          <div class="fold-body">
            <ScrewRow typed={typed} index={index} />
          </div>
        </details>
      )
    })}
  </>
)

const ScrewRow: FC<{ typed: BenchTyped; index: number }> = ({ typed, index }) => {
  const at = `setScrews[${index}]`
  return (
    <>
      <div class="field-pair">
        <Field
          {...benchProps(typed, `${at}.name`, ...(index === 0 ? ['setScrews'] : []))}
          label={w.name}
          hint={w.nameHint}
        />
        <BenchNumber typed={typed} name={`${at}.quantityCount`} label={w.quantityCount} />
      </div>
      <div class="field-pair">
        <BenchNumber typed={typed} name={`${at}.torqueNm`} label={w.torqueNm} unit="N·m" />
        <BenchNumber
          typed={typed}
          name={`${at}.designTorqueNm`}
          label={w.designTorqueNm}
          unit="N·m"
        />
      </div>
    </>
  )
}
