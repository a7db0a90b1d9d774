import type { FC } from 'hono/jsx'
import type { Instrument, InstrumentFile } from '../../src/domain/instrument.ts'
import { Button } from '../components/button.tsx'
import { ButtonRow } from '../components/button-row.tsx'
import { DataTable } from '../components/data-table.tsx'
import { FileField } from '../components/file-field.tsx'
import { SelectField } from '../components/select-field.tsx'
import { minuteText } from '../figures/time-text.ts'
import { ownErrorOf } from '../own-error-of.ts'
import { instrumentSentences } from '../words/en/instruments.ts'
import { words } from '../words/en.ts'
import type { InstrumentForms } from './forms.ts'

/** Photos of an instrument are shown; they and the other files lead to what was kept. */
export const FilesSection: FC<{
  files: readonly InstrumentFile[]
  forms: InstrumentForms
}> = ({ files, forms }) => {
  const w = words.instruments
  const { instrument } = forms
  const newest = files.toReversed()
  const photos = newest.filter((one) => one.kind === 'photo')
  return (
    <section id="files" class="stack" aria-labelledby="files-title">
      <div class="section-head">
        <h2 id="files-title">{w.filesTitle}</h2>
      </div>
      {photos.length === 0 ? null : (
        <ul class="cluster plain-list">
          {photos.map((one) => (
            <li>
              <a href={hrefOf(one)}>
                <img
                  class="photo"
                  src={hrefOf(one)}
                  alt={w.photoAlt(instrument.number, one.name)}
                  loading="lazy"
                />
              </a>
            </li>
          ))}
        </ul>
      )}
      {newest.length === 0 ? (
        <p class="soft">{w.noFiles}</p>
      ) : (
        <FilesTable files={newest} instrument={instrument} />
      )}
      <FileForm {...forms} />
    </section>
  )
}

const FilesTable: FC<{ files: readonly InstrumentFile[]; instrument: Instrument }> = (props) => {
  const { files, instrument } = props
  const w = words.instruments
  const ofText = (id: number | null) => {
    const found = instrument.calibrations.find((one) => one.id === id)
    return found === undefined ? w.ofInstrument : w.ofCalibration(found.certificateNumber)
  }
  return (
    <DataTable
      caption={w.filesCaption}
      columns={[
        { label: w.fileColumns.name },
        { label: w.fileColumns.of },
        { label: w.fileColumns.by },
      ]}
      rows={files.map((one) => ({
        cells: [
          <a href={hrefOf(one)}>{one.name}</a>,
          ofText(one.calibrationId),
          w.by(one.byName, minuteText(one.at)),
        ],
      }))}
    />
  )
}

const FileForm: FC<InstrumentForms> = ({ instrument, formKey, typed, faults }) => {
  const w = words.instruments
  const isFaulty = faults.some((one) => one.field === 'file' || one.field === 'calibrationId')
  return (
    <details class="fold" open={isFaulty}>
      <summary>{w.addFile}</summary>
      <form
        method="post"
        action={`/instruments/${instrument.id}/files`}
        enctype="multipart/form-data"
        class="fold-body stack"
      >
        <input type="hidden" name="formKey" value={`${formKey}-file`} />
        <FileField
          name="file"
          label={w.file}
          hint={w.fileHint}
          accept="image/jpeg,image/png,image/webp,application/pdf,text/csv,text/plain"
          {...ownErrorOf(faults, 'file', instrumentSentences)}
        />
        <SelectField
          name="calibrationId"
          label={w.fileOf}
          emptyLabel={w.ofInstrument}
          value={typed.calibrationId}
          options={instrument.calibrations.toReversed().map((one) => ({
            value: String(one.id),
            label: w.ofCalibration(one.certificateNumber),
          }))}
          {...ownErrorOf(faults, 'calibrationId', instrumentSentences)}
        />
        <ButtonRow>
          <Button label={w.submitFile} />
        </ButtonRow>
      </form>
    </details>
  )
}

function hrefOf({ instrumentId, id }: InstrumentFile): string {
  return `/instruments/${instrumentId}/files/${id}`
}
