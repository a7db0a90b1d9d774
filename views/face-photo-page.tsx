import type { FC } from 'hono/jsx'
import { FacePhotoAnswerView } from './face-photo/answer.tsx'
import type { FacePhotoForm } from './face-photo/page-props.ts'
import { type Frame, Page } from './page.tsx'

export const FacePhotoPage: FC<{ frame: Frame; form: FacePhotoForm }> = ({ frame, form }) => (
  <Page frame={frame} title={form.orderNumber} width="wide">
    <div id="face-photo-answer">
      {form.answer === null ? null : <FacePhotoAnswerView form={form} answer={form.answer} />}
    </div>
  </Page>
)
