import type { FC } from 'hono/jsx'
import { bandPatterns } from '../../src/domain/flatness.ts'
import { bandPicture } from '../../src/plots/band-picture.ts'
import type { Drawing } from '../../src/plots/drawing.ts'
import { guidePicture } from '../../src/plots/guide-picture.ts'
import { guideSaddle } from '../../src/plots/guide-saddle.ts'
import { type GuideScene, guideScenes } from '../../src/plots/guide-scenes.ts'
import { saddleLinePicture } from '../../src/plots/saddle-line-picture.ts'
import { saddleSurfacePicture } from '../../src/plots/saddle-surface-picture.ts'
import { sectionPicture } from '../../src/plots/section-picture.ts'
import { shareBarsPicture } from '../../src/plots/share-bars-picture.ts'
import { formatFixed } from '../../src/science/rounding/format-fixed.ts'
import { saddleLineShare } from '../../src/science/surface/saddle-line-share.ts'
import { words } from '../words/en.ts'
import { GuideFigures, GuideSteps } from './guide-steps.tsx'

const drawn = new Map<string, Drawing>()

/** The pictures never change: each is drawn once, when it is first asked for. */
function once(key: string, draw: () => Drawing): Drawing {
  const picture = drawn.get(key) ?? draw()
  drawn.set(key, picture)
  return picture
}

/** How to find the open side, to tell hill from hollow, and what a line count can't see. */
export const FlatnessGuide: FC = () => {
  const w = words.flatnessGuide
  return (
    <div class="guide stack-loose">
      <section class="stack" aria-labelledby="guide-tests">
        <h2 id="guide-tests">{w.testsTitle}</h2>
        <p class="strong">{w.rule}</p>
        <p class="small">{w.caution}</p>
        {guideScenes.map((scene) => (
          <Scene scene={scene} />
        ))}
      </section>
      <Patterns />
      <LineCount />
    </div>
  )
}

const Scene: FC<{ scene: GuideScene }> = ({ scene }) => {
  const { title, captions } = words.flatnessGuide.scenes[scene]
  const figures = captions.map((caption, index) => ({
    caption,
    drawing: once(`${scene} ${index}`, () => guidePicture(scene, index)),
  }))
  return <GuideSteps id={`guide-${scene}`} title={title} figures={figures} />
}

const Patterns: FC = () => {
  const w = words.flatnessGuide
  return (
    <section class="stack" aria-labelledby="guide-patterns">
      <h2 id="guide-patterns">{w.patternsTitle}</h2>
      <p>{w.patternsLead}</p>
      {bandPatterns
        .filter((pattern) => pattern !== 'unreadable')
        .map((pattern) => (
          <article class="guide-scene stack-tight">
            <h3>{words.trade.pattern[pattern]}</h3>
            <p class="small">{w.patterns[pattern]}</p>
            <GuideFigures
              figures={[
                {
                  caption: w.sectionUp,
                  drawing: once(`${pattern} up`, () => sectionPicture({ pattern, along: 'up' })),
                },
                {
                  caption: w.sectionAcross,
                  drawing: once(`${pattern} across`, () =>
                    sectionPicture({ pattern, along: 'across' }),
                  ),
                },
                { caption: w.seen, drawing: bandPicture({ pattern, sizePx: 96 }) },
              ]}
            />
          </article>
        ))}
    </section>
  )
}

const LineCount: FC = () => {
  const w = words.flatnessGuide
  const { innerRatio, heightBands } = guideSaddle
  const share = saddleLineShare(innerRatio)
  const captions = w.lineCaptions({
    bore: formatFixed({ value: innerRatio, decimals: 1 }),
    trueBands: formatFixed({ value: heightBands, decimals: 0 }),
    shownBands: formatFixed({ value: heightBands * share, decimals: 2 }),
    percent: `${formatFixed({ value: 100 * share, decimals: 0 })} %`,
  })
  const drawings = [
    once('saddle surface', saddleSurfacePicture),
    once('saddle line', saddleLinePicture),
    once('saddle share', () => shareBarsPicture(share)),
  ]
  const figures = drawings.map((drawing, index) => ({ drawing, caption: captions[index] ?? '' }))
  return (
    <section class="stack" aria-labelledby="guide-line">
      <h2 id="guide-line">{w.lineTitle}</h2>
      <p>{w.lineLead}</p>
      <GuideFigures figures={figures} />
      <p class="strong">{w.lineSo}</p>
    </section>
  )
}
