import type { ContentfulStatusCode } from 'hono/utils/http-status'
import { errorSentence, errorTitles } from '../../views/words/en/errors.ts'
import { faultSentence } from '../../views/words/en/faults.ts'
import type { AppErrorKind } from '../domain/app-error.ts'
import type { Fault } from '../domain/fault.ts'

/** One table of what each refusal answers. */
export const statusOf: Readonly<Record<AppErrorKind, ContentfulStatusCode>> = {
  invalid: 422,
  'not-found': 404,
  forbidden: 403,
  conflict: 409,
  'too-many': 429,
  'too-large': 413,
}

export type ProblemTitle = keyof typeof errorTitles

/** A long trace that is wrong throughout is not answered with tens of megabytes. */
const mostErrors = 100

/** A refusal of the machine interface, as problem details (RFC 9457). */
export function problem(
  title: ProblemTitle,
  status: ContentfulStatusCode,
  reason: string,
  more: {
    readonly details?: Readonly<Record<string, string | number>>
    readonly faults?: readonly Fault[]
    readonly headers?: Readonly<Record<string, string>>
    readonly extra?: Readonly<Record<string, unknown>>
  } = {},
): Response {
  const errors = more.faults
    ?.slice(0, mostErrors)
    .map((one) => ({ field: one.field, message: faultSentence(one) }))
  const body = {
    type: `/problems/${reason}`,
    title: errorTitles[title],
    status,
    detail: errors?.[0]?.message ?? errorSentence(reason, more.details ?? {}),
    ...(errors === undefined ? {} : { errors }),
    ...more.extra,
  }
  return new Response(JSON.stringify(body), {
    status,
    headers: { 'content-type': 'application/problem+json', ...more.headers },
  })
}

/** Input that was refused, one sentence a field. */
export function inputProblem(faults: readonly Fault[]): Response {
  return problem('invalid', 422, 'input', { faults })
}
