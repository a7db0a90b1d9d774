/** A field of the form that a survey is read with; undefined where nothing is read any more. */
export function surveyField(name: string): HTMLInputElement | undefined {
  const input = document.querySelector<HTMLInputElement>(`form[data-survey] input[name="${name}"]`)
  return input ?? undefined
}
