import type { FC } from 'hono/jsx'
import { Button } from './components/button.tsx'
import { ButtonRow } from './components/button-row.tsx'
import { ErrorSummary } from './components/error-summary.tsx'
import { FileField } from './components/file-field.tsx'
import { PageHead } from './components/page-head.tsx'
import { TextAreaField } from './components/text-area-field.tsx'
import type { FacePhotoUpload } from './face-photo/page-props.ts'
import { photoFieldId, photoSentence } from './face-photo/photo-fault.ts'
import { type Frame, Page } from './page.tsx'
import { FaceQuestion } from './recording/face-question.tsx'
import { LampCaution } from './recording/lamp-caution.tsx'
import { Question } from './recording/question.tsx'
import { words } from './words/en.ts'

const accepted = 'image/jpeg,image/png,image/webp'

/** Asks for a photograph of the bands of a face. */
export const FacePhotoFormPage: FC<{ frame: Frame; upload: FacePhotoUpload }> = (props) => {
  const { frame, upload } = props
  const { facePhoto: w, chrome } = words
  const { orderNumber, faults } = upload
  const error = (name: string) => {
    const fault = faults.find((one) => one.field === name)
    return fault === undefined ? {} : { error: photoSentence(fault) }
  }
  return (
    <Page frame={frame} title={`${w.uploadTitle} ${orderNumber}`}>
      <PageHead
        title={w.uploadTitle}
        over={`${orderNumber} · ${upload.sealSerial}`}
        lead={w.uploadLead}
      />
      <form
        method="post"
        action={`/work-orders/${orderNumber}/face-photos`}
        enctype="multipart/form-data"
        class="stack-loose"
      >
        <input type="hidden" name="formKey" value={upload.formKey} />
        <ErrorSummary
          title={chrome.faultsTitle}
          faults={faults.map((fault) => ({
            fieldId: photoFieldId(fault),
            message: photoSentence(fault),
          }))}
        />
        <FaceQuestion number={1} faces={upload.faces} value={upload.faceId} {...error('faceId')} />
        <Question number={2} title={w.file}>
          <div class="stack">
            <h3>{w.howTitle}</h3>
            <ul class="photo-advice">
              {w.how.map((text) => (
                <li>{text}</li>
              ))}
            </ul>
            {/* Both are the one field: a browser sends the one that was filled. */}
            <div class="field-pair photo-sources">
              <FileField
                name="file"
                id="file-camera"
                label={w.camera}
                accept={accepted}
                capture="environment"
                hint={w.cameraHint}
              />
              <FileField
                name="file"
                label={w.choose}
                accept={accepted}
                hint={w.fileHint}
                {...error('file')}
              />
            </div>
            <TextAreaField
              name="note"
              label={w.note}
              value={upload.note}
              rows={2}
              {...error('note')}
            />
          </div>
        </Question>
        <ButtonRow>
          <Button label={w.submitUpload} kind="main" size="large" />
        </ButtonRow>
        <LampCaution />
      </form>
    </Page>
  )
}
