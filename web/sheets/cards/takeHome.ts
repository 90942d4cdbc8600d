import { homeCare, skinSigns } from "../../../presets/sheets/aftercare"
import { visitLimits } from "../../../presets/timing/visitLimits"
import type { Plan } from "../../core/document/schema"
import { measured } from "../../core/figures/measured"
import { type DoneToday, doneToday, foilsDone } from "../../core/record/doneToday"
import { type Days, type Returns, returnDates } from "../../core/record/returnDates"
import { pictureOf } from "../../drawing/headDrawing"
import type { Fonts } from "../pens/fontFile"
import type { Page } from "../pens/page"
import { toPrintable, toPrintablePlan } from "../pens/printable"
import type { Block } from "../setting/block"
import { flow } from "../setting/flow"
import { bodyMm, headedPages } from "../setting/headedPages"
import { type Reading, readingBlock, underRule } from "../setting/largePrint"
import { dateInWords, daysInWords } from "../setting/numbers"
import type { SheetOptions } from "../setting/sheetOptions"
import { beside, spreadGroups } from "../setting/stack"
import { letters, type } from "../setting/typesetting"
import { viewDrawing } from "../views/viewBlock"
import { frameOf } from "../views/viewFrame"

const figureMm = 56
const gapMm = 6
const scale = 0.22

/** What the client takes home, in large print: no gram, no formula and no health answer is on it. */
export function takeHome(unchecked: Plan, { paper, zone }: SheetOptions, fonts: Fonts): Page[] {
  const { plan } = toPrintablePlan(unchecked, fonts)
  const done = doneToday(unchecked, zone)
  const width = paper.widthMm - 2 * paper.marginMm
  const part = (title: string, readings: readonly Reading[], wide = width) =>
    readingBlock(
      title,
      readings.map((each) => ({ ...each, text: toPrintable(each.text, fonts) })),
      { width: wide, fonts },
    )
  const blocks = [
    beside(
      { block: part("What was done", doneReadings(done), width - figureMm - gapMm), leftMm: 0 },
      { block: figureOf(plan), leftMm: width - figureMm },
    ),
    part("Your skin, today and the next three days", skinSigns),
    part(
      "Looking after it",
      homeCare.map(({ when, text }) => ({ label: when, text })),
    ),
    part("When to come back", returnReadings(returnDates(done.day, done.isToned))),
  ]
  const bodies = flow(
    blocks.map((block, i) => (i === 0 ? block : underRule(block, width))),
    bodyMm(paper),
  )
  const sheet = { plan: { ...plan, date: done.day }, paper, fonts, about: "To take home" }
  return headedPages(bodies, sheet, (body) => spreadGroups(body, bodyMm(paper)))
}

const doneReadings = ({ sentences }: DoneToday): Reading[] => [
  ...sentences.map((text) => ({ text })),
  { text: "The picture shows where, not the colour." },
]

function returnReadings({ toner, frame, testBy }: Returns): Reading[] {
  const between = ({ from, to }: Days) => daysInWords(from, to)
  return [
    ...(toner ? [{ label: "Toner", text: between(toner) }] : []),
    { label: "Face frame", text: `${between(frame)}, on the new growth only` },
    {
      label: "Alert test",
      text: `Before every toner or dye, ${visitLimits.alertTestHours} hours ahead at the latest: for the earliest day by ${dateInWords(testBy)}.`,
    },
    { label: "Ask us", text: "Salon, phone: ______________________________________" },
  ]
}

/** The front as she sees herself, with what was done alone. */
function figureOf(whole: Plan): Block {
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
  const caption = letters(
    "As you see yourself in the mirror",
    [figureMm / 2, heightMm + 4],
    type.small,
    "center",
  )
  return { heightMm: heightMm + 7, items: [drawing, caption] }
}
