import type { FC } from 'hono/jsx'
import { words } from '../words/en.ts'

const places = {
  bands: '/calculator',
  conformity: '/calculator/conformity',
  uncertainty: '/calculator/uncertainty',
} as const

/** The ways between the calculators. */
export const CalculatorTabs: FC<{ current: keyof typeof places }> = ({ current }) => {
  const { tabs, tabsLabel } = words.calculator
  return (
    <nav class="tabs" aria-label={tabsLabel}>
      <ul class="tabs-list">
        {(Object.keys(places) as (keyof typeof places)[]).map((place) => (
          <li>
            <a
              class="tab"
              href={places[place]}
              aria-current={place === current ? 'page' : undefined}
            >
              {tabs[place]}
            </a>
          </li>
        ))}
      </ul>
    </nav>
  )
}
