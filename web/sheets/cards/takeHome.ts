import { isFoil } from "../../../geometry/section/section"
import { homeCare, skinSigns } from "../../../presets/sheets/aftercare"
import { visitLimits } from "../../../presets/timing/visitLimits"
import { type Contact, noContact } from "../../core/document/salon"
import type { Plan } from "../../core/document/schema"
import { measured } from "../../core/figures/measured"
import { type DoneToday, doneToday, foilsDone } from "../../core/record/doneToday"
import { type Returns, returnDates } from "../../core/record/returnDates"
import { pictureOf } from "../../drawing/headDrawing"
import type { Words } from "../../words/en/words"
import { say } from "../../words/say"
import type { Fonts } from "../pens/fontFile"
import { type Page, tagged } from "../pens/page"
import type { Block } from "../setting/block"
import { flow } from "../setting/flow"
import { bodyMm, headedPages } from "../setting/headedPages"
import { type Reading, readingBlock, underRule } from "../setting/largePrint"
import { type Press, pressOf } from "../setting/press"
import type { SheetOptions } from "../setting/sheetOptions"
import { beside, spreadGroups } from "../setting/stack"
import { letters, type } from "../setting/typesetting"
import { viewDrawing } from "../views/viewBlock"
import { frameOf } from "../views/viewFrame"

const figureMm = 46
const gapMm = 6
const scale = 0.175

/** What the client takes home, in large print: no gram, no formula and no health answer is on it. */
export function takeHome(plan: Plan, options: SheetOptions, fonts: Fonts): Page[] {
  const { paper, zone } = options
  const press = pressOf(options, fonts)
  const done = doneToday(plan, zone)
  const contact = plan.salon?.contact ?? noContact
  const width = paper.widthMm - 2 * paper.marginMm
  const part = (title: string, readings: readonly Reading[], wide = width) =>
    readingBlock(title, readings, { width: wide, press })
  const said = press.words.sheets.cards.takeHome
  const blocks = [
    beside(
      {
        block: part(
          done.isDone ? said.done : said.planned,
          doneReadings(done, press.words),
          width - figureMm - gapMm,
        ),
        leftMm: 0,
      },
      { block: figureOf(plan, press), leftMm: width - figureMm },
    ),
    part(
      said.skin,
      skinSigns.map((sign) => ({
        text: sign === "breathing" ? said.breathing(contact.emergency) : said.signs[sign],
      })),
    ),
    part(
      said.care,
      homeCare.map((care) => ({ label: said.careWhen[care], text: said.careText[care] })),
    ),
    part(said.back, returnReadings(returnDates(done.day, done.isToned), contact, press.words)),
  ]
  const bodies = flow(
    blocks.map((block, i) => (i === 0 ? block : underRule(block, width))),
    bodyMm(paper),
  )
  const sheet = { plan: { ...plan, date: done.day }, paper, press, about: said.about }
  return headedPages(bodies, sheet, (body) => spreadGroups(body, bodyMm(paper)))
}

const doneReadings = ({ lines, isDone }: DoneToday, { sheets, record }: Words): Reading[] => [
  ...lines.map((line) => ({ text: say(isDone ? record.told.done : record.told.planned, line) })),
  { text: sheets.cards.takeHome.picture },
]

function returnReadings(
  { toner, frame, testBy }: Returns,
  { name, phone }: Contact,
  { sheets }: Words,
): Reading[] {
  const said = sheets.cards.takeHome
  return [
    ...(toner ? [{ label: said.toner, text: said.days(toner.from, toner.to) }] : []),
    { label: said.frame, text: said.regrowth(frame.from, frame.to) },
    { label: said.test, text: said.testBy(visitLimits.alertTestHours, testBy) },
    { label: said.questions, text: said.ask(name, phone) },
    { label: said.mind, text: said.defers },
  ]
}

/** The front as the client sees it in the mirror, with what was done alone. */
function figureOf(whole: Plan, { words }: Press): Block {
  const plan: Plan = { ...whole, sections: foilsDone(whole) }
  const { head, overlaps } = measured(plan)
  const picture = pictureOf(head, "front")
  const frame = frameOf("front", picture, { scale, names: 0 })
  const { drawing, heightMm } = viewDrawing({
    plan,
    overlaps,
    picture,
    frame,
    scale,
    flipped: true,
    widthMm: figureMm,
  })
  const foils = plan.sections.filter(isFoil).map(({ mapNumber }) => mapNumber)
  const caption = letters(
    words.sheets.cards.takeHome.mirror,
    [figureMm / 2, heightMm + 4],
    type.small,
    "center",
  )
  return {
    heightMm: heightMm + 7,
    items: tagged(
      [drawing, caption],
      "Figure",
      words.sheets.pictures.view(words.sheets.views.frontInMirror, foils),
    ),
  }
}
