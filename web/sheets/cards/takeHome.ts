import type { Plan } from "../../core/document/schema"
import type { Fonts } from "../pens/fontFile"
import { type Page, tagged } from "../pens/page"
import type { Block } from "../setting/block"
import { flow } from "../setting/flow"
import { bodyMm, headedPages } from "../setting/headedPages"
import { readingBlock, underRule } from "../setting/largePrint"
import { type Press, pressOf } from "../setting/press"
import type { SheetOptions } from "../setting/sheetOptions"
import { beside, spreadGroups } from "../setting/stack"
import { letters, type, wrap } from "../setting/typesetting"
import { figureMm, takeHomePicture } from "./takeHomePicture"
import { type TakeHomeWords, takeHomeWords } from "./takeHomeWords"

const gapMm = 6
const captionLineMm = 4

/** What the client takes home, in large print: no gram, no formula and no health answer is on it. */
export function takeHome(plan: Plan, options: SheetOptions, fonts: Fonts): Page[] {
  const { paper } = options
  const press = pressOf(options, fonts)
  const width = paper.widthMm - 2 * paper.marginMm
  const { day, about, parts, picture } = takeHomeWords(plan, options)
  const [done, ...others] = parts
  const room = { width: width - figureMm - gapMm, press }
  const blocks = [
    beside(
      { block: readingBlock(done.title, done.readings, room), leftMm: 0 },
      { block: figureOf(plan, picture, press), leftMm: width - figureMm },
    ),
    ...others.map(({ title, readings }) => readingBlock(title, readings, { width, press })),
  ]
  const bodies = flow(
    blocks.map((block, i) => (i === 0 ? block : underRule(block, width))),
    bodyMm(paper),
  )
  const sheet = { plan: { ...plan, date: day }, paper, press, about }
  return headedPages(bodies, sheet, (body) => spreadGroups(body, bodyMm(paper)))
}

function figureOf(plan: Plan, { alt, caption }: TakeHomeWords["picture"], press: Press): Block {
  const { drawing, heightMm } = takeHomePicture(plan)
  const lines = wrap(caption, figureMm, type.small, press)
  const under = lines.map((line, i) =>
    letters(line, [figureMm / 2, heightMm + 4 + i * captionLineMm], type.small, "center"),
  )
  return {
    heightMm: heightMm + 3 + lines.length * captionLineMm,
    items: tagged([drawing, ...under], "Figure", alt),
  }
}
