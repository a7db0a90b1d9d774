import type { FC } from 'hono/jsx'
import { Caution } from '../components/caution.tsx'
import { words } from '../words/en.ts'

/** Stands before anything that makes somebody open a seal. */
export const StripCaution: FC = () => (
  <Caution sign={words.chrome.caution} title={words.findings.cautionTitle}>
    {words.findings.caution.map((text) => (
      <p>{text}</p>
    ))}
  </Caution>
)

/** Stands in place of everything while nobody has said that the seal is clean. */
export const QuarantineStop: FC<{ orderNumber: string }> = ({ orderNumber }) => (
  <Caution sign={words.chrome.caution} title={words.findings.quarantineTitle}>
    {words.findings.quarantine.map((text) => (
      <p>{text}</p>
    ))}
    <p>
      <a href={`/work-orders/${orderNumber}#decontamination`}>{words.findings.quarantineLink}</a>
    </p>
  </Caution>
)
