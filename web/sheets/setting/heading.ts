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
  const [smallest, lines] = brokenTitle(title, room, press)
  const first = bottom - (lines.length - 1) * titleLineMm(smallest)
  return lines.map((line, i) => letters(line, [left, first + i * titleLineMm(smallest)], smallest))
}

/** In the largest of the small types in which all its lines stand in the head of the page. */
function brokenTitle(title: string, room: number, press: Press): [Type, string[]] {
  const tried = brokenSizes.map((each): [Type, string[]] => [each, wrap(title, room, each, press)])
  const fitting = tried.find(([each, lines]) => lines.length * titleLineMm(each) <= titleMm)
  return fitting ?? tried[tried.length - 1]
}

const sizes = (setting: Type, ...points: readonly number[]): Type[] =>
  points.map((sizePt) => ({ ...setting, sizePt }))
const titleSizes = sizes(type.title, 21, 18, 15, 12.5, 10.5)
/** The last are for letters that stand as their codes, which are long. */
const brokenSizes = sizes(type.title, 10.5, 8, 6.5, 5)
const titleLineMm = ({ sizePt }: Type) => 0.38 * sizePt
const titleMm = 12.5

const clientSizes = sizes(type.heading, 12, 9.5, 7.5, 6)
const clientShare = 0.55

/** The client's initials; smaller where they stand as codes. */
function clientType(client: string, width: number, press: Press): Type {
  const fitting = clientSizes.find((each) => widthMm(client, each, press) <= clientShare * width)
  return fitting ?? clientSizes[clientSizes.length - 1]
}

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
  const ofClient = clientType(client, right - left, press)
  const room = right - left - widthMm(client, ofClient, press) - 8
  const when = plan.date ? said.datedPage(plan.date, number, count) : said.page(number, count)
  return [
    ...tagged(titleItems(titleOf(plan, press.words), left, top + 6.2, room, press), "H1"),
    ...(client ? [letters(client, [right, top + 6.2], ofClient, "right")] : []),
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
