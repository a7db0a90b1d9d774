import type { FC } from 'hono/jsx'
import { Button } from '../components/button.tsx'
import { ButtonRow } from '../components/button-row.tsx'
import { SelectField } from '../components/select-field.tsx'
import { selectOptions } from '../select-options.ts'
import { words } from '../words/en.ts'
import { faceLays, type WholeFacesForm } from './page-props.ts'
import { readingOption } from './reading-title.ts'

/** Which two readings are looked at, and how they are laid on each other. */
export const ChooseForm: FC<{ form: WholeFacesForm }> = ({ form }) => {
  const w = words.wholeFaces
  const { orderNumber, face, readings, pair, lay } = form
  const options = readings.map((one) => ({
    value: String(one.reading.id),
    label: readingOption(one),
  }))
  return (
    <form method="get" action={`/work-orders/${orderNumber}/whole-faces`} class="card stack">
      <h2>{w.chooseTitle}</h2>
      <input type="hidden" name="face" value={String(face?.id ?? '')} />
      <div class="faces-choose">
        <SelectField
          name="first"
          label={w.first}
          options={options}
          value={String(pair?.first.reading.id ?? options[0]?.value)}
        />
        <SelectField
          name="second"
          label={w.second}
          options={options}
          value={String(pair?.second.reading.id ?? options[1]?.value)}
        />
      </div>
      <SelectField
        name="lay"
        label={w.lay}
        hint={w.layHint}
        options={selectOptions(faceLays, w.lays)}
        emptyLabel={w.layUsual}
        value={lay}
      />
      <ButtonRow>
        <Button label={w.show} kind="main" />
      </ButtonRow>
    </form>
  )
}
