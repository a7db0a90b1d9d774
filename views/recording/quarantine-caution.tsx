import type { FC } from 'hono/jsx'
import { Caution } from '../components/caution.tsx'
import { words } from '../words/en.ts'

/** Who reads a face handles the seal: residues are spoken of first. */
export const QuarantineCaution: FC = () => {
  const { flatness: w, chrome } = words
  return (
    <Caution sign={chrome.caution} title={w.quarantineTitle}>
      <p>{w.quarantine}</p>
    </Caution>
  )
}
