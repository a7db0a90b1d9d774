import { expect } from 'vitest'
import type { TestApp } from './test-app.ts'

type Answer = Record<string, unknown>

/** Asks a calculator of the interface as the lapping technician; what it should answer is checked. */
export function askCalculator({ postJson }: TestApp) {
  const post = (name: string, body: unknown) => postJson(`/api/v1/calculate/${name}`, body, 'tess')
  return {
    async ask(name: string, body: unknown): Promise<Answer> {
      const response = await post(name, body)
      expect(response.status, JSON.stringify(body)).toBe(200)
      return (await response.json()) as Answer
    },
    /** The fields that it refuses, each with a sentence. */
    async refusals(name: string, body: unknown): Promise<readonly string[]> {
      const response = await post(name, body)
      expect(response.status, JSON.stringify(body)).toBe(422)
      expect(response.headers.get('content-type')).toBe('application/problem+json')
      const { errors } = (await response.json()) as {
        errors: { field: string; message: string }[]
      }
      for (const { message } of errors) expect(message.length).toBeGreaterThan(5)
      return errors.map((one) => one.field)
    },
  }
}
