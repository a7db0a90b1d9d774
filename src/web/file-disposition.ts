/**
 * How a file is handed over and under which name: plain for old programs, and exactly (RFC 6266,
 * RFC 8187) for the others.
 */
export function fileDisposition(how: 'inline' | 'attachment', name: string): string {
  const plain = name.replace(/[^A-Za-z0-9 ._()-]/g, '_')
  const exact = encodeURIComponent(name).replace(
    /['()*]/g,
    (sign) => `%${sign.charCodeAt(0).toString(16).toUpperCase()}`,
  )
  return `${how}; filename="${plain}"; filename*=UTF-8''${exact}`
}
