import type { Head } from "../../../geometry/scalp/head"
import type { Section } from "../../../geometry/section/section"
import { measurePath } from "../../../geometry/surface/surfacePath"
import { mmText } from "./figureText"
import { whereOf } from "./words"

/** Steps to begin from: what was drawn, a sentence or two each, in the order of application. */
export const draftSteps = (sections: readonly Section[], head: Head): string[] =>
  sections.map((section) => {
    const { lengthMm } = measurePath(head.surface, section.parting)
    const middle = section.parting[section.parting.length >> 1]
    const { behindMm } = head.hairline.coordinates(middle)
    const where = whereOf(section, head)
    const far = where.includes(" mm ") ? "" : ` and ${mmText(behindMm)} behind the hairline`
    return `Part at the ${where.replace(/^(\d)/, "place $1")}, ${mmText(lengthMm)} long${far}. ${takes[section.kind](section)}`
  })

const depthText = ({ depthMm: { start, end } }: Section) =>
  start === end ? tenths(start) : `${tenths(start)} to ${tenths(end)}`
const tenths = (mm: number) => `${Number(mm.toFixed(1))} mm`
const side = ({ taken }: Section) => (taken === "front" ? "in front of it" : "behind it")

const takes: Record<Section["kind"], (section: Section) => string> = {
  slice: (section) => `Take a slice ${depthText(section)} deep ${side(section)}; place and coat it.`,
  weave: (section) => `Weave out of ${depthText(section)} ${side(section)}; place and coat it.`,
  backcomb: (section) =>
    `Take ${depthText(section)} ${side(section)}, push part of it back to the root, and coat past the cushion.`,
  "left-out": (section) => `Leave ${depthText(section)} ${side(section)} as it is.`,
}
