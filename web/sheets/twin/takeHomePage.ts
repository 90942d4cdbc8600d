import type { Plan } from "../../core/document/schema"
import { htmlFile, markup } from "../../drawing/htmlFile"
import { figureMm, takeHomePicture } from "../cards/takeHomePicture"
import { type TakeHomePart, type TakeHomeWords, takeHomeWords } from "../cards/takeHomeWords"
import { drawPage } from "../pens/drawPage"
import { svgPen } from "../pens/svgPen"
import { titleOf } from "../setting/heading"
import type { Reading } from "../setting/largePrint"
import type { SheetOptions } from "../setting/sheetOptions"

/** The sheet to take home as a page for a browser, in one file: the same words and the same picture as on paper. */
export function takeHomePage(plan: Plan, options: SheetOptions): string {
  const { words, language } = options
  const { day, about, parts, picture } = takeHomeWords(plan, options)
  const [done, ...others] = parts
  const title = titleOf(plan, words)
  const { initials } = plan.client
  const main = [
    "<header>",
    `<h1 dir="auto">${markup(title)}</h1>`,
    `<p>${markup(about)}</p>`,
    ...(initials ? [`<p>${markup(words.sheets.heading.client(initials))}</p>`] : []),
    ...(day
      ? [`<p><time datetime="${markup(day)}">${markup(words.common.figures.date(day))}</time></p>`]
      : []),
    "</header>",
    section(done, figure(plan, picture)),
    ...others.map((part) => section(part)),
  ]
  return htmlFile({ language, title: `${title}, ${about}`, main: main.join("\n") })
}

const section = ({ title, readings }: TakeHomePart, after = "") =>
  ["<section>", `<h2>${markup(title)}</h2>`, readingsMarkup(readings), after, "</section>"]
    .filter(Boolean)
    .join("\n")

function readingsMarkup(readings: readonly Reading[]): string {
  if (readings.every(({ label }) => label === undefined))
    return readings.map(({ text }) => `<p>${markup(text)}</p>`).join("\n")
  const rows = readings.map(({ label = "", text }) => `<dt>${markup(label)}</dt>\n<dd>${markup(text)}</dd>`)
  return `<dl>\n${rows.join("\n")}\n</dl>`
}

function figure(plan: Plan, { alt, caption }: TakeHomeWords["picture"]): string {
  const { drawing, heightMm } = takeHomePicture(plan)
  const { pen, markup: drawn } = svgPen("picture")
  const paper = { name: "", widthMm: figureMm, heightMm, marginMm: 0 }
  drawPage({ paper, items: [drawing] }, pen)
  return [
    "<figure>",
    `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${figureMm} ${heightMm}" role="img" aria-labelledby="picture-title">`,
    `<title id="picture-title">${markup(alt)}</title>`,
    drawn(),
    "</svg>",
    `<figcaption>${markup(caption)}</figcaption>`,
    "</figure>",
  ].join("\n")
}
