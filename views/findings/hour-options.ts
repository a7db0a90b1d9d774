const hours = ['12', '1', '2', '3', '4', '5', '6', '7', '8', '9', '10', '11']

/**
 * The hours that a list offers. One that stands between two of them, as programs may send it, is
 * offered too where it stands in the record: else a correction of something else would drop it.
 */
export function hourOptions(stands: string): readonly { value: string; label: string }[] {
  const isBetween = /^\d{1,2}[.,]\d+$/.test(stands) && Number(stands.replace(',', '.')) <= 12
  const offered = isBetween ? [...hours, stands].sort((a, b) => order(a) - order(b)) : hours
  return offered.map((value) => ({ value, label: value }))
}

/** 12 stands on top of the list, as it does on the clock. */
function order(hour: string): number {
  return Number(hour.replace(',', '.')) % 12
}
