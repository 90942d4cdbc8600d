import type { Plan } from "../../core/document/schema"
import type { Words } from "../../words/en/words"
import type { Item, Paper } from "../pens/page"
import type { Press } from "./press"
import { letters, rule, rulePt, shorten, type, widthMm } from "./typesetting"

export const headingMm = 17.4

export const titleOf = ({ name }: Pick<Plan, "name">, { sheets }: Words) =>
  name.trim() || sheets.heading.unnamed

/** The head of a page: what it is (`about`), whose it is, when (where the plan has a date), and which page of how many. */
export function heading(
  plan: Plan,
  page: { paper: Paper; number: number; count: number; about: string; press: Press },
): Item[] {
  const { paper, number, count, about, press } = page
  const [left, right, top] = [paper.marginMm, paper.widthMm - paper.marginMm, paper.marginMm]
  const { initials } = plan.client
  const said = press.words.sheets.heading
  const client = initials && said.client(initials)
  const room = right - left - widthMm(client, type.heading, press) - 8
  const when = plan.date ? said.datedPage(plan.date, number, count) : said.page(number, count)
  return [
    letters(shorten(titleOf(plan, press.words), room, type.title, press), [left, top + 6.2], type.title),
    ...(client ? [letters(client, [right, top + 6.2], type.heading, "right")] : []),
    letters(
      shorten(about, right - left - widthMm(when, type.body, press) - 8, type.body, press),
      [left, top + 12.4],
      type.body,
    ),
    letters(when, [right, top + 12.4], type.body, "right"),
    rule([left, top + 15], [right, top + 15], rulePt.bold),
  ]
}
