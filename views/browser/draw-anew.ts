import type { Drawing } from '../../src/plots/drawing.ts'
import { svgMark } from '../components/svg-mark.ts'

/** Draws into a picture of the page what it shows now; its name and description stay. */
export function drawAnew(svg: SVGElement, drawing: Drawing): void {
  const names = [...svg.children].filter((one) => one.matches('title, desc'))
  const marks = drawing.shapes.map((shape) => {
    const { tag, attributes, text } = svgMark(shape)
    const element = document.createElementNS('http://www.w3.org/2000/svg', tag)
    for (const [name, value] of Object.entries(attributes)) {
      if (value !== undefined) element.setAttribute(name, String(value))
    }
    if (text !== undefined) element.textContent = text
    return element
  })
  svg.replaceChildren(...names, ...marks)
}
