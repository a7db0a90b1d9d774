import { readFileSync } from 'node:fs'

/** Reads one file of fixtures/reference; the caller names the shape it relies on. */
export function readReference<T>(path: string): T {
  return JSON.parse(readReferenceText(path)) as T
}

export function readReferenceText(path: string): string {
  return readFileSync(new URL(`../../fixtures/reference/${path}`, import.meta.url), 'utf8')
}
