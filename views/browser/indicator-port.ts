type Port = {
  open: (options: { readonly baudRate: number }) => Promise<void>
  readonly readable: ReadableStream<Uint8Array<ArrayBuffer>> | null
}
type Serial = { requestPort: () => Promise<Port> }
const serial = (navigator as Navigator & { readonly serial?: Serial }).serial

/** An indicator on a serial port, where the browser has any: it sends a line a reading. */
export const indicatorPort = {
  isThere: serial !== undefined,

  /** Asks the person which port, and hands on line by line until it closes. */
  listen: async (on: {
    readonly open: () => void
    readonly line: (line: string) => void
    readonly close: () => void
  }): Promise<void> => {
    const port = await serial?.requestPort().catch(() => undefined)
    if (port === undefined) return
    await port.open({ baudRate: 9600 })
    on.open()
    const reader = port.readable?.pipeThrough(new TextDecoderStream()).getReader()
    let rest = ''
    for (let part = await reader?.read(); part && !part.done; part = await reader?.read()) {
      const lines = (rest + part.value).split(/\r\n|\r|\n/)
      rest = lines.pop() ?? ''
      for (const line of lines) if (line.trim() !== '') on.line(line)
    }
    on.close()
  },
}
