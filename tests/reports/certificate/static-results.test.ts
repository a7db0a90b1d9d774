import { describe, expect, it } from 'vitest'
import { staticBlocks } from '../../../reports/certificate/static-results.ts'
import { certificateWords } from '../../../views/words/en/certificate.ts'
import { ordinaryRecord } from '../../support/sample-certificate.ts'

const words = certificateWords.results

describe('the static tests of a certificate', () => {
  const record = ordinaryRecord()
  const counting = record.staticTests[0]!
  const failed = { ...counting, isNewest: false, note: 'the first, which failed' }

  it('come with what counts first, and what was overtaken under a heading of its own', () => {
    const blocks = staticBlocks({ ...record, staticTests: [failed, counting] })
    expect(blocks.map((one) => ('text' in one ? one.text : one.kind))).toEqual([
      words.static,
      'table',
      words.staticOvertaken,
      'table',
    ])
    const [, first, , second] = blocks
    expect(JSON.stringify(first)).not.toContain(words.superseded)
    expect(JSON.stringify(second)).toContain(words.superseded)
  })

  it('have no second heading where nothing was overtaken', () => {
    const texts = JSON.stringify(staticBlocks({ ...record, staticTests: [counting] }))
    expect(texts).not.toContain(words.staticOvertaken)
  })

  it('are said to be missing where there is none', () => {
    expect(JSON.stringify(staticBlocks({ ...record, staticTests: [] }))).toContain(words.noStatic)
  })
})
