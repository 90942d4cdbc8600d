import type { Plan } from "../../core/document/schema"
import type { Words } from "../../words/en/words"
import { type Item, type Paper, tagged } from "../pens/page"
import type { Block } from "./block"
import type { Press } from "./press"
import { letters, rule, rulePt, shorten, type Type, type, widthMm, wrap } from "./typesetting"

export const headingMm = 17.4

export const titleOf = ({ name }: Pick<Plan, "name">, { sheets }: Words) =>
  name.trim() || sheets.heading.unnamed

/** The title in the largest type in which it fits on its line; a longer one is broken, and never cut. */
function titleItems(title: string, left: number, bottom: number, room: number, press: Press): Item[] {
  const setting = titleSizes.find((each) => widthMm(title, each, press) <= room)
  if (setting) return [letters(title, [left, bottom], setting)]
  const smallest = titleSizes[titleSizes.length - 1]
  const lines = wrap(title, room, smallest, press)
  const first = bottom - (lines.length - 1) * titleLineMm
  return lines.map((line, i) => letters(line, [left, first + i * titleLineMm], smallest))
}

const titleSizes: readonly Type[] = [21, 18, 15, 12.5, 10.5].map((sizePt) => ({
  ...type.title,
  sizePt,
}))
const titleLineMm = 4

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
    ...tagged(titleItems(titleOf(plan, press.words), left, top + 6.2, room, press), "H1"),
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

/** What is said in the head of a page in type as large as the numbers of the foils. */
export function alertBlock(alert: string): Block {
  if (alert === "") return { heightMm: 0, items: [] }
  return { heightMm: alertMm, items: [letters(alert, [0, 5.4], type.number)] }
}
const alertMm = 7.6
