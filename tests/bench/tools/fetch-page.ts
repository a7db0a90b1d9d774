import { Agent, get } from 'node:http'

/** One connection that is kept open, for requests one after the other. */
export function keptConnection(): Agent {
  return new Agent({ keepAlive: true, maxSockets: 1 })
}

/**
 * Fetches a page to its last byte.
 * @returns its size in bytes
 * @throws Error when the answer is not 200
 */
export function fetchPage(
  url: string,
  options: { readonly agent?: Agent; readonly cookie?: string } = {},
): Promise<number> {
  const { agent, cookie } = options
  const headers = cookie === undefined ? {} : { cookie }
  return new Promise((resolve, reject) => {
    const request = get(url, { ...(agent === undefined ? {} : { agent }), headers }, (answer) => {
      let byteCount = 0
      answer.on('data', (part: Buffer) => (byteCount += part.length))
      answer.once('error', reject)
      answer.once('end', () => {
        if (answer.statusCode === 200) resolve(byteCount)
        else reject(new Error(`${url} answered ${answer.statusCode}`))
      })
    })
    request.once('error', reject)
  })
}
