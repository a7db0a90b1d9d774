import type { FC } from 'hono/jsx'
import type { CombinedWholeFace } from '../../src/domain/combine-whole-faces.ts'
import { figure } from '../../src/domain/figure.ts'
import { Button } from '../components/button.tsx'
import { ButtonRow } from '../components/button-row.tsx'
import { ResultFigure } from '../components/result-figure.tsx'
import { secondResultText } from '../figures/result-text.ts'
import { uncertainParts } from '../figures/uncertain-text.ts'
import { words } from '../words/en.ts'
import type { ComparedPair, WholeFacesForm } from './page-props.ts'

/** The mean of both, to be recorded; or why there is none. */
export const CombineSection: FC<{ form: WholeFacesForm; pair: ComparedPair }> = (props) => {
  const { form, pair } = props
  const w = words.wholeFaces
  if (pair.combination === null) return null
  return (
    <section class="card stack" aria-labelledby="combine-title" id="combined">
      <h2 id="combine-title">{w.combineTitle}</h2>
      {pair.combination.kind === 'refused' ? (
        <p>{w.refusal[pair.combination.refusal]}</p>
      ) : (
        <Offered form={form} pair={pair} combined={pair.combination.combined} />
      )}
    </section>
  )
}

const Offered: FC<{ form: WholeFacesForm; pair: ComparedPair; combined: CombinedWholeFace }> = ({
  form,
  pair,
  combined,
}) => {
  const w = words.wholeFaces
  const { computed, disagreementRatio: ratio, turns } = combined
  const flatnessUm = computed.flatnessUm ?? 0
  const value = uncertainParts('flatness', flatnessUm, computed.uncertainty)
  const ratioText = figure(ratio, { decimals: 1 }).text
  const isGuess = turns.some((one) => one?.standing === 'guess')
  return (
    <>
      <p>{w.combineText}</p>
      <ResultFigure
        label={w.combineResult}
        value={value.value}
        doubt={value.doubt}
        unit={value.unit}
        second={secondResultText('flatness', flatnessUm)}
      />
      <p>{ratio > 1 ? w.combineDisagreement(ratioText) : w.combineExpected(ratioText)}</p>
      <Weights pair={pair} combined={combined} />
      {isGuess ? <p>{w.combineGuess}</p> : null}
      <form
        method="post"
        action={`/work-orders/${form.orderNumber}/whole-faces`}
        class="stack-tight"
      >
        <input type="hidden" name="formKey" value={form.formKey} />
        <input type="hidden" name="first" value={String(pair.first.reading.id)} />
        <input type="hidden" name="second" value={String(pair.second.reading.id)} />
        <p class="small soft">{w.combineHint}</p>
        <ButtonRow>
          <Button label={w.combineSubmit} kind="main" size="large" />
        </ButtonRow>
      </form>
    </>
  )
}

/** Of the two that were chosen; one that is combined itself stands for several. */
const Weights: FC<{ pair: ComparedPair; combined: CombinedWholeFace }> = ({ pair, combined }) => {
  const { source } = combined.wholeFace
  if (source.kind !== 'combined') return null
  const weightOf = (id: number) => source.parts.find((one) => one.readingId === id)?.weight
  const [first, second] = [weightOf(pair.first.reading.id), weightOf(pair.second.reading.id)]
  if (first === undefined || second === undefined) return null
  const percent = (share: number) => figure(100 * share, { decimals: 0 }).text
  return <p class="small soft">{words.wholeFaces.weights(percent(first), percent(second))}</p>
}
