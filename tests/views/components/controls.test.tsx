import type { JSX } from 'hono/jsx/jsx-runtime'
import { describe, expect, it } from 'vitest'
import { BandStepper } from '../../../views/components/band-stepper.tsx'
import { Button } from '../../../views/components/button.tsx'
import { CheckField } from '../../../views/components/check-field.tsx'
import { ChoiceCards } from '../../../views/components/choice-cards.tsx'
import { ErrorSummary } from '../../../views/components/error-summary.tsx'
import { Field } from '../../../views/components/field.tsx'
import { SelectField } from '../../../views/components/select-field.tsx'
import { TextAreaField } from '../../../views/components/text-area-field.tsx'

const html = (element: JSX.Element): string => String(element)
const nasty = '"><script>alert(1)</script>'
const safe = '&quot;&gt;&lt;script&gt;alert(1)&lt;/script&gt;'

describe('Field', () => {
  it('gives back what was typed, escaped and untouched', () => {
    const page = html(<Field name="bands" label="Bands" value={nasty} error="Enter figures." />)
    expect(page).toContain(`value="${safe}"`)
    expect(page).not.toContain('<script>')
    expect(html(<Field name="bands" label="Bands" value=" 2,5o " />)).toContain('value=" 2,5o "')
  })

  it('ties label, hint and fault to the input, the fault first', () => {
    const page = html(<Field name="soak" label="Soak" hint="Beside the flat." error="Too short." />)
    expect(page).toContain('<label class="field-label" for="soak">Soak</label>')
    expect(page).toContain('aria-describedby="soak-error soak-hint"')
    expect(page).toContain('aria-invalid="true"')
    expect(page).toContain('id="soak-error">Too short.</p>')
    expect(page).toContain('id="soak-hint">Beside the flat.</p>')
  })

  it('describes nothing that is not there', () => {
    const page = html(<Field name="soak" label="Soak" />)
    expect(page).not.toContain('aria-describedby')
    expect(page).not.toContain('aria-invalid')
  })

  it('passes attributes of htmx on to the input', () => {
    const page = html(<Field name="a" label="A" attributes={{ 'hx-post': '/bench' }} />)
    expect(page).toMatch(/<input[^>]* hx-post="\/bench"/)
  })
})

describe('SelectField, TextAreaField and CheckField', () => {
  const options = [
    { value: 'helium', label: 'Helium' },
    { value: 'sodium', label: 'Sodium' },
  ]

  it('select the option that was chosen and no other', () => {
    const page = html(<SelectField name="lamp" label="Lamp" options={options} value="sodium" />)
    expect(page.match(/selected/g)).toHaveLength(1)
    expect(page).toMatch(/value="sodium" selected/)
  })

  it('offer an empty first option only where one is asked for', () => {
    const without = html(<SelectField name="lamp" label="Lamp" options={options} />)
    expect(without).not.toContain('value=""')
    const page = html(<SelectField name="lamp" label="Lamp" options={options} emptyLabel="—" />)
    expect(page).toContain('<option value="">—</option>')
  })

  it('escape text between tags and keep its lines', () => {
    const page = html(<TextAreaField name="why" label="Why" value={`a\nb${nasty}`} />)
    expect(page).toContain(`>a\nb${safe}</textarea>`)
  })

  it('tick the box that was ticked', () => {
    expect(html(<CheckField name="c" label="C" isChecked />)).toMatch(/ checked/)
    expect(html(<CheckField name="c" label="C" />)).not.toMatch(/ checked/)
  })
})

describe('ChoiceCards', () => {
  const choices = [
    { value: 'convex', label: 'Convex', picture: <svg aria-hidden="true" /> },
    { value: 'concave', label: 'Concave', detail: 'low centre' },
  ]

  it('is a group of native radio buttons, each inside its own label', () => {
    const page = html(<ChoiceCards name="p" legend="Pattern" choices={choices} value="concave" />)
    expect(page).toContain('<legend class="choices-legend">Pattern</legend>')
    expect(page.match(/type="radio"/g)).toHaveLength(2)
    expect(page).toMatch(/id="p-2" name="p" value="concave" checked/)
    expect(page.match(/ checked/g)).toHaveLength(1)
  })

  it('hides pictures from assistive technology, since the label says the same', () => {
    const page = html(<ChoiceCards name="p" legend="Pattern" choices={choices} />)
    expect(page).toContain('<span class="choice-picture" aria-hidden="true">')
  })

  it('describes the group by its fault', () => {
    const page = html(<ChoiceCards name="p" legend="P" choices={choices} error="Choose one." />)
    expect(page).toMatch(/<fieldset[^>]* aria-describedby="p-error"/)
  })
})

describe('BandStepper', () => {
  const labels = { lessBand: 'a', lessQuarter: 'b', moreQuarter: 'c', moreBand: 'd' }

  it('has four named buttons that do not submit and steps of a quarter and of one', () => {
    const page = html(
      <BandStepper name="bands" label="Bands" value="2.25" unit="bands" labels={labels} />,
    )
    const steps = [...page.matchAll(/type="button" data-step="([^"]+)" aria-label="([^"]+)"/g)]
    expect(steps.map((match) => [match[1], match[2]])).toEqual([
      ['-1', '−1 a'],
      ['-0.25', '−¼ b'],
      ['0.25', '+¼ c'],
      ['1', '+1 d'],
    ])
  })

  it('keeps the typed count and asks for a decimal keyboard', () => {
    const page = html(
      <BandStepper
        name="bands"
        label="Bands"
        value={nasty}
        unit="bands"
        labels={labels}
        error="No."
      />,
    )
    expect(page).toContain(`value="${safe}"`)
    expect(page).toContain('inputmode="decimal"')
    expect(page).toContain('aria-describedby="bands-error"')
  })
})

describe('ErrorSummary and Button', () => {
  it('links each fault to its field and is read out at once', () => {
    const page = html(
      <ErrorSummary title="Not yet" faults={[{ fieldId: 'soak', message: nasty }]} />,
    )
    expect(page).toContain('role="alert"')
    expect(page).toContain(`<a href="#soak">${safe}</a>`)
  })

  it('writes nothing when there is no fault', () => {
    expect(html(<ErrorSummary title="Not yet" faults={[]} />)).not.toContain('<')
  })

  it('submits unless told otherwise', () => {
    expect(html(<Button label="Record" />)).toContain('type="submit"')
    expect(html(<Button label="More" type="button" />)).toContain('type="button"')
  })
})
