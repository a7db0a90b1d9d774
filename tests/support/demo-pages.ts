import type { DemoServer } from './demo-server.ts'

export type DemoPage = { readonly path: string; readonly status?: number }

/** Every page with its address in the invented workshop, by who looks at it; '' for nobody. */
export function demoPages({ ask }: DemoServer): Readonly<Record<string, readonly DemoPage[]>> {
  const order = (stage: string) =>
    ask(`SELECT number FROM work_order WHERE stage = '${stage}' ORDER BY id DESC`)
  const lapping = order('lapping')
  const handedOver = order('handed-over')
  const corrected = ask(
    `SELECT number FROM work_order WHERE id = (
      SELECT work_order_id FROM flatness_reading WHERE replaces_id IS NOT NULL)`,
  )
  const reading = ask(
    `SELECT id FROM flatness_reading WHERE work_order_id = (
      SELECT id FROM work_order WHERE number = '${lapping}') ORDER BY id DESC`,
  )
  const tested = ask(
    `SELECT id FROM static_test WHERE work_order_id = (
      SELECT id FROM work_order WHERE number = '${handedOver}') ORDER BY id DESC`,
  )
  const measured = ask('SELECT id FROM measured_value ORDER BY id DESC')
  const measuredOrder = ask(
    `SELECT number FROM work_order WHERE id = (
      SELECT work_order_id FROM measured_value WHERE id = ${measured})`,
  )
  const lapped = ask(
    `SELECT id FROM lap_cycle WHERE work_order_id = (
      SELECT id FROM work_order WHERE number = '${lapping}') ORDER BY id DESC`,
  )
  const doubted = ask("SELECT instrument_id FROM calibration WHERE as_found = 'beyond'")
  const own = ask(
    `SELECT number FROM work_order WHERE customer_id = 1 AND stage = 'dispatched' ORDER BY id DESC`,
  )
  const ownReading = ask(
    `SELECT id FROM flatness_reading WHERE work_order_id = (
      SELECT id FROM work_order WHERE number = '${own}') ORDER BY id DESC`,
  )
  const ownSurveyed = ask(
    `SELECT number FROM work_order WHERE customer_id = 1 AND stage = 'dispatched' AND id IN (
      SELECT work_order_id FROM dial_survey) ORDER BY id DESC`,
  )
  const certificate = ask('SELECT number FROM certificate WHERE customer_id = 1 ORDER BY id DESC')
  const tied = ask(`SELECT id FROM limit_set WHERE name LIKE 'Faces by material%'`)
  const seal = ask(
    `SELECT seal_id FROM work_order WHERE customer_id = 1 AND stage = 'dispatched' ORDER BY id DESC`,
  )
  const photographed = ask(
    `SELECT number FROM work_order WHERE stage = 'lapping' AND id IN (
      SELECT work_order_id FROM face_photo) ORDER BY id DESC`,
  )
  const photo = ask(
    `SELECT id FROM face_photo WHERE work_order_id = (
      SELECT id FROM work_order WHERE number = '${photographed}') ORDER BY id`,
  )
  const surveyed = (id: string) =>
    ask(`SELECT number FROM work_order WHERE id = (
      SELECT work_order_id FROM dial_survey WHERE id = ${id})`)
  const half = ask(
    `SELECT id FROM dial_survey WHERE id NOT IN (SELECT dial_survey_id FROM dial_survey_end)`,
  )
  const bent = ask(`SELECT id FROM dial_survey WHERE characteristic = 'shaft-straightness'`)
  const bentValue = ask(
    `SELECT measured_value_id FROM dial_survey_end WHERE dial_survey_id = ${bent}`,
  )
  const quarantined = ask(
    `SELECT number FROM work_order WHERE decontamination = 'not-stated' AND stage = 'received'`,
  )
  const stripped = ask(`SELECT number FROM work_order WHERE id = (
    SELECT work_order_id FROM part_line WHERE work_order_id IN (
      SELECT work_order_id FROM dial_survey) ORDER BY id DESC LIMIT 1)`)
  const surveyCertificate = ask(
    `SELECT number FROM certificate WHERE work_order_id IN (
      SELECT work_order_id FROM dial_survey) ORDER BY id DESC`,
  )
  const run = ask(
    'SELECT number FROM work_order WHERE id = (SELECT work_order_id FROM dynamic_run)',
  )
  const of = (...paths: string[]): readonly DemoPage[] => paths.map((path) => ({ path }))
  const conformity =
    '/calculator/conformity?value=1.9&standardUncertainty=0.12&upperLimit=2&rule=four-outcomes'
  return {
    tamsin: [
      ...of('/bench', '/work-orders', '/work-orders?stage=released&q=2026', '/work-orders/new'),
      ...of('/work-orders/new?customer=1', `/work-orders/new?seal=${seal}`),
      ...of(`/work-orders/${lapping}`, `/work-orders/${order('refused')}`),
      ...of(`/work-orders/${corrected}`, `/work-orders/${order('withdrawn')}`),
      ...of(`/work-orders/${lapping}/results/flatness-reading/${reading}`),
      ...of(`/work-orders/${lapping}/flatness/new`, '/flatness-guide'),
      ...of(`/work-orders/${lapping}/flatness/new?replaces=${reading}`),
      ...of(`/work-orders/${lapping}/static-tests/new`, '/calculator'),
      ...of(`/work-orders/${photographed}/face-photos/new`),
      ...of(`/work-orders/${photographed}/face-photos/${photo}`),
      ...of(`/work-orders/${photographed}/whole-faces`),
      ...of(`/work-orders/${lapping}/exceptions/new?instrument=${doubted}`),
      ...of('/instruments?state=overdue', `/instruments/${doubted}`),
      ...of(`/work-orders/${lapping}/exceptions/new?instrument=10`),
      ...of(`/work-orders/${lapping}/measured-values/new`),
      ...of(`/work-orders/${lapping}/measured-values/new?characteristic=roughness`),
      ...of(`/work-orders/${lapping}/measured-values/new?characteristic=face-height`),
      ...of(`/work-orders/${lapping}/lap-cycles/new`),
      ...of(`/work-orders/${surveyed(half)}/run-out-surveys/${half}`),
      ...of(`/work-orders/${surveyed(bent)}/run-out-surveys/${bent}`),
      ...of(`/work-orders/${surveyed(bent)}/results/measured-value/${bentValue}`),
      ...of(`/work-orders/${lapping}/run-out-surveys/new`, `/work-orders/${lapping}/strip`),
      ...of(`/work-orders/${surveyed(bent)}/strip`, `/work-orders/${quarantined}/strip`),
      ...of(`/work-orders/${stripped}`, `/work-orders/${stripped}/strip`),
      ...of(`/work-orders/${run}`, `/work-orders/${run}/dynamic-runs/1`),
      ...of(`/work-orders/${lapping}/findings/new`),
      ...of(`/work-orders/${lapping}/findings/new?part=rotating-face`),
      ...of(`/work-orders/${lapping}/part-lines/new?part=spring`),
      ...of(`/work-orders/${surveyed(bent)}/alignment`, `/work-orders/${stripped}/alignment`),
      ...of(`/work-orders/${lapping}/wear-tracks/new`),
      ...of(`/work-orders/${lapping}/spring-checks/new`),
      ...of(`/work-orders/${lapping}/assembly/new`),
      ...of(`/work-orders/${lapping}/lap-cycles/new?replaces=${lapped}`),
      ...of(`/work-orders/${measuredOrder}`, `/work-orders/${measuredOrder}/limits`),
      ...of('/limit-sets/compare', '/limit-sets/compare?sets=3&sets=4'),
      ...of(`/work-orders/${measuredOrder}/results/measured-value/${measured}`),
      ...of('/calculator?lamp=sodium&bands=2,25', '/instruments', '/instruments/10'),
      ...of(conformity, '/calculator/conformity', '/calculator/uncertainty'),
      ...of(`/instruments/${doubted}/touched`),
      ...of('/certificates', '/customers', '/customers/1', '/customers/1/seals/new', '/account'),
      ...of(`/work-orders/${quarantined}`),
      { path: `/work-orders/${quarantined}/flatness/new`, status: 409 },
      { path: '/work-orders/W-1999-0001', status: 404 },
      { path: '/people', status: 403 },
    ],
    ingrid: [
      ...of('/inspection', `/work-orders/${handedOver}/inspection`),
      ...of(`/work-orders/${photographed}/whole-faces`, `/work-orders/${stripped}/inspection`),
      ...of(`/certificates/${surveyCertificate}`),
      ...of(`/work-orders/${handedOver}/results/static-test-leak/${tested}`),
      ...of(`/work-orders/${handedOver}/results/static-test-drop/${tested}`),
      ...of(`/work-orders/${corrected}/inspection`, `/certificates/${certificate}`),
      ...of(`/instruments/${doubted}/touched`),
      ...of(
        '/limit-sets',
        '/limit-sets/3',
        '/limit-sets/3/next',
        `/limit-sets/${tied}`,
        '/limit-sets/new',
        '/audit',
        '/instruments/10',
      ),
    ],
    marit: of('/people', '/customers', '/instruments', '/limit-sets', '/bench', '/inspection'),
    cora: [
      ...of('/my-seals', `/seals/${seal}`, '/certificates', `/certificates/${certificate}`),
      ...of(`/work-orders/${own}/results/flatness-reading/${ownReading}`),
      ...of(`/work-orders/${ownSurveyed}/alignment`),
    ],
    '': [
      ...of('/sign-in', '/verify', `/verify/${certificate}`),
      { path: '/verify/C-2026-0001-222222', status: 404 },
    ],
  }
}
