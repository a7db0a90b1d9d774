import { type CastName, castPassword } from './cast.ts'
import type { TestApp } from './test-app.ts'

/** The fields of the decision's form as its page gives them to one of the cast. */
export async function decisionForm(
  app: TestApp,
  number: string,
  as: CastName,
  changes: Record<string, string> = {},
): Promise<Record<string, string>> {
  const whole = await (await app.get(`/work-orders/${number}/inspection`, as)).text()
  // The page has forms of concessions before it.
  const page = whole.slice(whole.indexOf('/decision#decision"'))
  const hidden = (name: string) => {
    const found = new RegExp(`name="${name}" value="([^"]+)"`).exec(page)?.[1]
    if (found === undefined) throw new Error(`the page has no field ${name}`)
    return found
  }
  return {
    formKey: hidden('formKey'),
    fingerprint: hidden('fingerprint'),
    outcome: 'release',
    reason: '',
    password: castPassword(as),
    ...changes,
  }
}
