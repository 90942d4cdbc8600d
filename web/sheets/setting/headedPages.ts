import type { Plan } from "../../core/document/schema"
import { inRuns } from "../pens/inRuns"
import { moved, type Page, type Paper } from "../pens/page"
import type { Block } from "./block"
import { heading, headingMm } from "./heading"
import type { Press } from "./press"
import { stack } from "./stack"

/** The height below the heading of a page, mm. */
export const bodyMm = ({ heightMm, marginMm }: Paper) => heightMm - 2 * marginMm - headingMm

type Sheet = { plan: Plan; paper: Paper; press: Press; about: string }

/** The pages of a sheet: each the heading, its number, and its body as `lay` sets it. */
export const headedPages = (
  bodies: readonly (readonly Block[])[],
  { plan, paper, press, about }: Sheet,
  lay: (body: readonly Block[]) => Block = stack,
): Page[] =>
  bodies.map((body, i) => ({
    paper,
    items: inRuns(
      [
        ...heading(plan, { paper, press, about, number: i + 1, count: bodies.length }),
        ...moved(lay(body).items, paper.marginMm, paper.marginMm + headingMm),
      ],
      press.fonts,
    ),
  }))
