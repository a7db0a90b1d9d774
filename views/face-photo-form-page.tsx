import type { FC } from 'hono/jsx'
import type { FacePhotoUpload } from './face-photo/page-props.ts'
import { type Frame, Page } from './page.tsx'

export const FacePhotoFormPage: FC<{ frame: Frame; upload: FacePhotoUpload }> = ({
  frame,
  upload,
}) => (
  <Page frame={frame} title={upload.orderNumber}>
    <form
      method="post"
      action={`/work-orders/${upload.orderNumber}/face-photos`}
      enctype="multipart/form-data"
    >
      <input type="hidden" name="formKey" value={upload.formKey} />
      <input type="hidden" name="faceId" value={upload.faceId} />
      <input type="file" name="file" />
    </form>
  </Page>
)
