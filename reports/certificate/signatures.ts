import type { CertificateRecord, CertifiedTester } from '../../src/domain/certificate.ts'
import { certificateWords } from '../../views/words/en/certificate.ts'
import type { Block, Line } from '../document.ts'
import { orElse } from './or-else.ts'
import { printMoment } from './print-when.ts'

const { signatures: words, ...common } = certificateWords

/** Who answers for what, and the mark that nothing follows. */
export function signatureBlocks(record: CertificateRecord): readonly Block[] {
  const { testers, handOver, number, revision } = record
  const note = handOver?.note.trim() ?? ''
  return [
    { kind: 'heading', text: words.heading },
    ...(note === '' ? [] : [{ kind: 'paragraph', text: words.note(note) } as const]),
    {
      kind: 'signatures',
      people: [
        { heading: words.tested, lines: testers.flatMap(testerLines) },
        { heading: words.handedOver, lines: handOverLines(record) },
        { heading: words.released, lines: releaseLines(record) },
      ],
    },
    { kind: 'end', text: common.end(number, revision) },
  ]
}

/** In the order of the work. */
const actKinds = [
  'wear-track',
  'spring-check',
  'lap-cycle',
  'flatness',
  'assembly',
  'static-test',
  'measured-value',
] as const satisfies readonly CertifiedTester['did'][number]['kind'][]

function testerLines({ name, did }: CertifiedTester): readonly Line[] {
  const acts = actKinds.flatMap((kind) => {
    const days = did.filter((act) => act.kind === kind).map((act) => act.on)
    return days.length === 0 ? [] : [words.act(words.did[kind], days.join(', '))]
  })
  return [{ text: name, style: 'strong' }, ...acts.map((text) => ({ text }))]
}

function handOverLines({ handOver }: CertificateRecord): readonly Line[] {
  if (handOver === null) return [{ text: words.notHandedOver }]
  return [{ text: handOver.byName, style: 'strong' }, { text: printMoment(handOver.at) }]
}

function releaseLines({ release }: CertificateRecord): readonly Line[] {
  return [
    { text: release.byName, style: 'strong' },
    { text: words.inspector },
    { text: words.department(orElse(release.byDepartment, common.notStated)) },
    { text: printMoment(release.at) },
    { text: words.byPassword, style: 'small' },
  ]
}
