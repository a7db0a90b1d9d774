import type { FC } from 'hono/jsx'
import { Caution } from '../components/caution.tsx'
import { words } from '../words/en.ts'

/** Lamp, solvent and glass, wherever bands are read. */
export const LampCaution: FC = () => {
  const { flatness: w, chrome } = words
  return (
    <Caution sign={chrome.caution} title={w.cautionTitle}>
      {w.caution.map((text) => (
        <p>{text}</p>
      ))}
    </Caution>
  )
}
