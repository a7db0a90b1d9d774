import { FlatnessGuide } from '../../../views/flatness/guide.tsx'
import { FlatnessGuidePage } from '../../../views/flatness-guide-page.tsx'
import type { AppContext } from '../context.ts'
import { asksForFragment, frameOf, sendFragment, sendPage } from '../send-page.ts'

/** The guide to light bands: a part beside the reading form, or a page of its own. */
export function showFlatnessGuide(c: AppContext): Promise<Response> {
  if (asksForFragment(c)) return sendFragment(c, <FlatnessGuide />)
  return sendPage(c, <FlatnessGuidePage frame={frameOf(c)} />)
}
