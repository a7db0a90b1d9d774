import type { FC } from 'hono/jsx'
import { ButtonLink } from './components/button-link.tsx'
import { PageHead } from './components/page-head.tsx'
import { type Frame, Page } from './page.tsx'
import { words } from './words/en.ts'

/** A refusal as a page: what happened, and a way back. */
export const ErrorPage: FC<{ frame: Frame; title: string; sentence: string }> = (props) => (
  <Page frame={props.frame} title={props.title} width="narrow">
    <PageHead title={props.title} />
    <p class="lead" data-refusal>
      {props.sentence}
    </p>
    <ButtonLink href="/" label={words.chrome.home} />
  </Page>
)
