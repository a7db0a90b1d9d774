import type { FC } from 'hono/jsx'
import { CheckField } from '../components/check-field.tsx'
import { words } from '../words/en.ts'
import { type FindingValues, type StripTyped, stripProps } from './form-values.ts'

/** Of a correction only: a wrong photograph is taken out, and stays with the finding before. */
export const WithoutPhoto: FC<{ typed: StripTyped<FindingValues>; isCorrection: boolean }> = ({
  typed,
  isCorrection,
}) => {
  const { name, value, error } = stripProps(typed, 'isPhotoTakenOut')
  if (!isCorrection && error === undefined) return null
  return (
    <CheckField
      name={name}
      value="yes"
      isChecked={value === 'yes'}
      label={words.findings.withoutPhoto}
      hint={words.findings.withoutPhotoHint}
      error={error}
    />
  )
}
