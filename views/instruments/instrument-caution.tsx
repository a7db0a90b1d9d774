import type { FC } from 'hono/jsx'
import type { Instrument } from '../../src/domain/instrument.ts'
import { lampIds } from '../../src/science/optics/lamps.ts'
import { Caution } from '../components/caution.tsx'
import { instrumentCautions, lampCautions } from '../words/en/instrument-cautions.ts'
import { words } from '../words/en.ts'

/** What to mind with an instrument of this kind; nothing where it hurts nobody. */
export const InstrumentCautions: FC<{ instrument: Instrument }> = ({ instrument }) => {
  const caution = instrumentCautions[instrument.kind]
  if (caution === undefined) return null
  const lamp = lampIds.find((one) => one === instrument.lampId)
  const ofLamp = lamp === undefined ? undefined : lampCautions[lamp]
  return (
    <Caution sign={words.chrome.caution} title={caution.title}>
      {ofLamp === undefined ? null : <p>{ofLamp}</p>}
      {caution.text.map((text) => (
        <p>{text}</p>
      ))}
    </Caution>
  )
}
