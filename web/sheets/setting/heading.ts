import type { Plan } from "../../core/document/schema"
import type { Fonts } from "../pens/fontFile"
import type { Item, Paper } from "../pens/page"
import { dateInWords } from "./numbers"
import { letters, rule, rulePt, shorten, type, widthMm } from "./typesetting"

export const headingMm = 17.4

export const titleOf = ({ name }: Pick<Plan, "name">) => name.trim() || "Plan without a name"

/** The head of a page: what it is (`about`), whose it is, when (where the plan has a date), and which page of how many. */
export function heading(
  plan: Plan,
  page: { paper: Paper; number: number; count: number; about: string; fonts: Fonts },
): Item[] {
  const { paper, number, count, about, fonts } = page
  const [left, right, top] = [paper.marginMm, paper.widthMm - paper.marginMm, paper.marginMm]
  const client = plan.client.initials && `Client ${plan.client.initials}`
  const room = right - left - widthMm(client, type.heading, fonts) - 8
  const pages = `page ${number} of ${count}`
  const when = plan.date ? `${dateInWords(plan.date)}, ${pages}` : pages
  return [
    letters(shorten(titleOf(plan), room, type.title, fonts), [left, top + 6.2], type.title),
    ...(client ? [letters(client, [right, top + 6.2], type.heading, "right")] : []),
    letters(
      shorten(about, right - left - widthMm(when, type.body, fonts) - 8, type.body, fonts),
      [left, top + 12.4],
      type.body,
    ),
    letters(when, [right, top + 12.4], type.body, "right"),
    rule([left, top + 15], [right, top + 15], rulePt.bold),
  ]
}
