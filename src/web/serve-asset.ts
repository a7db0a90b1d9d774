import type { AppContext } from './context.ts'

/** Answers an asset from memory; its name changes with its content, so it never goes stale. */
export function serveAsset(c: AppContext): Response {
  const asset = c.var.shop.assets.find(c.req.path)
  if (asset === undefined) return c.notFound() as Response
  const headers = {
    'content-type': asset.type.startsWith('text/') ? `${asset.type}; charset=utf-8` : asset.type,
    'cache-control': 'public, max-age=31536000, immutable',
    vary: 'accept-encoding',
  }
  const isZipped = (c.req.header('accept-encoding') ?? '').includes('gzip')
  const body = isZipped ? asset.gzip() : asset.bytes
  return new Response(new Uint8Array(body), {
    headers: isZipped ? { ...headers, 'content-encoding': 'gzip' } : headers,
  })
}
