import type { Plan } from "../../core/document/schema"
import type { Fonts } from "../pens/fontFile"
import { moved, type Page, type Paper } from "../pens/page"
import type { Block } from "./block"
import { heading, headingMm } from "./heading"
import { stack } from "./stack"

/** The height below the heading of a page, mm. */
export const bodyMm = ({ heightMm, marginMm }: Paper) => heightMm - 2 * marginMm - headingMm

type Sheet = { plan: Plan; paper: Paper; fonts: Fonts; about: string }

/** The pages of a sheet: each the heading, its number, and its body as `lay` sets it. */
export const headedPages = (
  bodies: readonly (readonly Block[])[],
  { plan, paper, fonts, about }: Sheet,
  lay: (body: readonly Block[]) => Block = stack,
): Page[] =>
  bodies.map((body, i) => ({
    paper,
    items: [
      ...heading(plan, { paper, fonts, about, number: i + 1, count: bodies.length }),
      ...moved(lay(body).items, paper.marginMm, paper.marginMm + headingMm),
    ],
  }))
