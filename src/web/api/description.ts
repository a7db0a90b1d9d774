import { machineWords } from '../../../views/words/en/machine.ts'
import type { AppContext } from '../context.ts'
import { type Route, routes } from '../route-table.ts'
import { responseSchemas } from './response-schemas.ts'
import { requestSchemas } from './schemas.ts'

type ApiName = keyof typeof machineWords.paths

let described: unknown

/** The description of the machine interface (OpenAPI 3.1), made from the route table itself. */
export function apiDescription(c: AppContext): Response {
  described ??= describe()
  return c.json(described)
}

function describe() {
  const paths: Record<string, Record<string, unknown>> = {}
  for (const name of Object.keys(machineWords.paths) as ApiName[]) {
    const route: Route = routes[name]
    const path = route.path.replace('/:file{.+\\.pdf}', '/{number}.pdf').replace(/:(\w+)/g, '{$1}')
    paths[path] = { ...paths[path], [route.method]: operation(name, route, path) }
  }
  return {
    openapi: '3.1.0',
    info: { title: machineWords.title, version: '1', description: machineWords.description },
    servers: [{ url: '/' }],
    components: {
      securitySchemes: {
        token: { type: 'http', scheme: 'bearer', description: machineWords.token },
      },
      schemas: { ...requestSchemas, ...responseSchemas },
    },
    paths,
  }
}

function operation(name: ApiName, route: Route, path: string) {
  const isPost = route.method === 'post'
  const isRecording = isPost && !path.includes('/calculate/')
  const parameters = [
    ...[...path.matchAll(/\{(\w+)\}/g)].map(([, one]) => parameter(one ?? '', 'path')),
    ...(name === 'apiListWorkOrders'
      ? ['state', 'customer', 'q', 'cursor', 'limit'].map((one) => parameter(one, 'query'))
      : []),
    ...(isRecording
      ? [{ ...parameter('Idempotency-Key', 'header'), description: machineWords.idempotency }]
      : []),
  ]
  const { answers } = machineWords
  const success = isRecording ? '201' : '200'
  const isPdf = path.endsWith('.pdf')
  return {
    operationId: name,
    summary: machineWords.paths[name],
    security: route.who === 'public' ? [] : [{ token: [] }],
    parameters,
    ...(isPost ? { requestBody: { required: true, content: contentOf(name) } } : {}),
    responses: {
      [success]: isPdf
        ? { description: answers.pdf, content: { 'application/pdf': {} } }
        : {
            description: isRecording ? answers.created : answers.ok,
            content: json(`${name}Answer`),
          },
      default: {
        description: answers.problem,
        content: {
          'application/problem+json': { schema: { $ref: '#/components/schemas/Problem' } },
        },
      },
    },
  }
}

function parameter(name: string, where: 'path' | 'query' | 'header') {
  return { name, in: where, required: where === 'path', schema: { type: 'string' } }
}

/** A photograph comes in a form beside its JSON. */
function contentOf(name: ApiName) {
  const { 'application/json': described } = json(`${name}Request`)
  if (name === 'apiCreateFlatnessReading') return wholeOrCounted(described)
  return name === 'apiPhotoFlatness'
    ? { 'multipart/form-data': described }
    : { 'application/json': described }
}

/** Counted bands or marks as JSON, a photograph as a form. */
function wholeOrCounted(counted: { readonly schema: unknown }) {
  const marked = json('apiCreateMarkedReadingRequest')['application/json'].schema
  const photo = json('apiCreatePhotoReadingRequest')['application/json'].schema
  return {
    'application/json': { schema: { oneOf: [counted.schema, marked] } },
    'multipart/form-data': { schema: photo },
  }
}

function json(schema: string) {
  const known = schema in requestSchemas || schema in responseSchemas
  const ref = known ? schema : 'Anything'
  return { 'application/json': { schema: { $ref: `#/components/schemas/${ref}` } } }
}
