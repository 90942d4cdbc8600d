import type { Plan } from "../../core/document/schema"
import { aimOf, faultsOf, selfChecks, timingOf, toolsOf } from "../../core/teaching/teachingPlan"
import { techniqueLaid } from "../../core/teaching/techniqueLaid"
import { houseTechnique } from "../../words/every/houseTechnique"
import { say } from "../../words/say"
import type { Fonts } from "../pens/fontFile"
import type { Page } from "../pens/page"
import { isWholeOnPaper } from "../pens/printable"
import type { Block } from "../setting/block"
import { cautionBlock } from "../setting/cautions"
import { type Flowing, flow } from "../setting/flow"
import { bodyMm, headedPages } from "../setting/headedPages"
import { paragraph, signed, titled } from "../setting/paragraph"
import { type Press, pressOf } from "../setting/press"
import type { SheetOptions } from "../setting/sheetOptions"
import { beside, lowered, stack } from "../setting/stack"
import { type } from "../setting/typesetting"
import { assessorsBox, checkList, faultTable } from "./assessment"
import { nothingEarlier } from "./earlierSections"
import { stepRows } from "./stepFrame"
import { bareOf, headViews } from "./stepViews"

const columnGapMm = 7
const blankScale = 0.26
const bullet = { sign: "·", signMm: 3 }

/** What an educator hands to a class: the technique as it is drawn, with nothing of the client it was drawn for. */
export function handout(plan: Plan, options: SheetOptions, fonts: Fonts): Page[] {
  const { paper, mirror } = options
  const press = pressOf(options, fonts)
  const width = paper.widthMm - 2 * paper.marginMm
  const said = press.words.sheets.handout
  const { teaching } = press.words
  const blocks: Flowing[] = [
    ...opening(plan, width, press),
    ...titled(said.draw, width, [
      headViews(
        ["right", "front", "left"],
        { plan: bareOf(plan), before: nothingEarlier },
        { widthMm: width, scale: blankScale, mirror, press },
      ),
    ]),
    ...titled(said.steps, width, stepRows(plan, { widthMm: width, mirror, press })),
    ...titled(
      said.timing,
      width,
      timingOf(plan).map((line) => dotted(say(teaching.times, line), width, press)),
    ),
    ...faultTable(faultsOf(plan), width, press),
    ...titled(said.checks, width, [
      checkList(
        selfChecks(plan).map((check) => say(teaching.checks, check)),
        width,
        press,
      ),
    ]),
    ...titled(said.assessor, width, [assessorsBox(width, press)]),
    lowered(
      cautionBlock(
        width,
        { stops: "", lettersMissing: !isWholeOnPaper(plan, fonts), setting: type.body },
        press,
      ),
      4,
    ),
  ]
  const unnamed: Plan = { ...plan, client: { initials: "" }, date: "" }
  const sheet = { plan: unnamed, paper, press, about: said.about }
  return headedPages(flow(blocks, bodyMm(paper)), sheet)
}

/** For whom it is, aim and tools; where a technique of the house is laid as it stands, its own aim. */
function opening(plan: Plan, width: number, press: Press): Block[] {
  const found = techniqueLaid(plan)
  const laid = found && houseTechnique(found.house, press.words.techniques, found.values)
  const said = press.words.sheets.handout
  const { teaching } = press.words
  const half = (width - columnGapMm) / 2
  const aim = laid
    ? `${laid.aim} ${laid.notes}`
    : aimOf(plan)
        .map((line) => say(teaching.aim, line))
        .join(" ")
  const tools = toolsOf(plan).map((line) => dotted(say(teaching.tools, line), half, press))
  const middle = Math.ceil(tools.length / 2)
  return [
    paragraph(said.practise, width, press, type.strong),
    ...titled(said.aim, width, [paragraph(aim, width, press)]),
    ...titled(said.tools, width, [
      beside(
        { block: stack(tools.slice(0, middle)), leftMm: 0 },
        { block: stack(tools.slice(middle)), leftMm: half + columnGapMm },
      ),
    ]),
  ]
}

const dotted = (text: string, width: number, press: Press) =>
  signed(bullet.sign, text, { width, signMm: bullet.signMm }, press)
