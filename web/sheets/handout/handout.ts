import type { Plan } from "../../core/document/schema"
import { aimOf, faultsOf, selfChecks, timingOf, toolsOf } from "../../core/teaching/teachingPlan"
import { techniqueLaid } from "../../core/teaching/techniqueLaid"
import type { Fonts } from "../pens/fontFile"
import type { Page } from "../pens/page"
import { toPrintablePlan } from "../pens/printable"
import type { Block } from "../setting/block"
import { cautionBlock } from "../setting/cautions"
import { type Flowing, flow } from "../setting/flow"
import { bodyMm, headedPages } from "../setting/headedPages"
import { paragraph, signed, titled } from "../setting/paragraph"
import type { SheetOptions } from "../setting/sheetOptions"
import { beside, lowered, stack } from "../setting/stack"
import { type } from "../setting/typesetting"
import { assessorsBox, checkList, faultTable } from "./assessment"
import { stepRows } from "./stepFrame"
import { bareOf, headViews } from "./stepViews"

const columnGapMm = 7
const blankScale = 0.26
const bullet = { sign: "·", signMm: 3 }
const numeralMm = 6

/** What an educator hands to a class: the technique as it is drawn, with nothing of the client it was drawn for. */
export function handout(unchecked: Plan, { paper, mirror }: SheetOptions, fonts: Fonts): Page[] {
  const { plan, isWhole } = toPrintablePlan(unchecked, fonts)
  const width = paper.widthMm - 2 * paper.marginMm
  const blocks: Flowing[] = [
    ...opening(plan, width, fonts),
    ...titled("Draw it yourself", width, [
      headViews(
        ["right", "front", "left"],
        { plan: bareOf(plan), before: [] },
        { widthMm: width, scale: blankScale, mirror, fonts },
      ),
    ]),
    ...stepsOf(plan, { widthMm: width, mirror, fonts }),
    ...titled(
      "Timing",
      width,
      timingOf(plan).map((text) => dotted(text, width, fonts)),
    ),
    ...faultTable(faultsOf(plan), width, fonts),
    ...titled("Check your own work", width, [checkList(selfChecks(plan), width, fonts)]),
    ...titled("Assessor", width, [assessorsBox(width)]),
    lowered(cautionBlock(width, { stops: "", lettersMissing: !isWhole, setting: type.body }, fonts), 4),
  ]
  const unnamed: Plan = { ...plan, client: { initials: "" }, date: "" }
  const sheet = { plan: unnamed, paper, fonts, about: "Technique handout" }
  return headedPages(flow(blocks, bodyMm(paper)), sheet)
}

/** Aim and tools; where a technique of the house is laid as it stands, its own words and its steps in short. */
function opening(plan: Plan, width: number, fonts: Fonts): Block[] {
  const laid = techniqueLaid(plan)
  const half = (width - columnGapMm) / 2
  const tools = toolsOf(plan).map((text) => dotted(text, half, fonts))
  const middle = Math.ceil(tools.length / 2)
  return [
    ...titled("Aim", width, [paragraph(laid ? `${laid.aim} ${laid.notes}` : aimOf(plan), width, fonts)]),
    ...titled("Tools", width, [
      beside(
        { block: stack(tools.slice(0, middle)), leftMm: 0 },
        { block: stack(tools.slice(middle)), leftMm: half + columnGapMm },
      ),
    ]),
    ...(laid
      ? titled(
          "In short",
          width,
          laid.steps.map((text, i) => signed(`${i + 1}.`, text, { width, signMm: numeralMm }, fonts)),
        )
      : []),
  ]
}

function stepsOf(plan: Plan, setting: { widthMm: number; mirror: boolean; fonts: Fonts }): Block[] {
  return titled("Step by step", setting.widthMm, stepRows(plan, setting))
}

const dotted = (text: string, width: number, fonts: Fonts) =>
  signed(bullet.sign, text, { width, signMm: bullet.signMm }, fonts)
