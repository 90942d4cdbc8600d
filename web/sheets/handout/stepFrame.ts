import type { Plan } from "../../core/document/schema"
import { headOf } from "../../core/figures/measured"
import { workingSectionsOf } from "../../core/figures/workingSections"
import { stepLines, stepTitle } from "../../core/teaching/stepLines"
import { type TeachingStep, teachingSteps } from "../../core/teaching/teachingSteps"
import type { PaperView } from "../../drawing/headDrawing"
import { say } from "../../words/say"
import type { Block } from "../setting/block"
import { labelGapMm, labelledRow } from "../setting/labelledRow"
import type { Press } from "../setting/press"
import { beside, lowered, stack } from "../setting/stack"
import { letters, rule, rulePt, type Type, type, widthMm, wrap } from "../setting/typesetting"
import { type Earlier, nothingEarlier } from "./earlierSections"
import { bareOf, stepHeads, viewsOf } from "./stepViews"

export type FrameSetting = { widthMm: number; mirror: boolean; press: Press }
type StepLine = { label: string; text: string }
type Frame = {
  title: string
  lines: readonly StepLine[]
  views: readonly PaperView[]
  plan: Plan
  before: Earlier
}

const stepNumber: Type = { sizePt: 26, weight: "semibold" }
/** Three figures stay within their column. */
const longNumber: Type = { sizePt: 21, weight: "semibold" }
const numberMm = 14
const titleMm = 11.5
const leastLabelMm = 16.5
/** So that no label is broken for the rounding of its own width. */
const roundingMm = 0.01
const gutterMm = 7
const underMm = 3

/** One frame a step, two in a row, or one of two views: the working sections first where the head is divided. */
export function stepRows(plan: Plan, setting: FrameSetting): Block[] {
  const halfMm = (setting.widthMm - gutterMm) / 2
  const frames = framesOf(plan, setting.press)
  const rows: Block[][] = []
  let isOpen = false
  for (const [i, frame] of frames.entries()) {
    setting.press.onStep?.(i + 1, frames.length)
    const isWide = frame.views.length > 1
    const block = frameBlock(frame, i + 1, { ...setting, widthMm: isWide ? setting.widthMm : halfMm })
    if (isOpen && !isWide) rows[rows.length - 1].push(block)
    else rows.push([block])
    isOpen = !isWide && rows[rows.length - 1].length === 1
  }
  return rows.map((row) => beside(...row.map((block, i) => ({ block, leftMm: i * (halfMm + gutterMm) }))))
}

function framesOf(plan: Plan, press: Press): Frame[] {
  const steps = teachingSteps(plan)
  const all = steps.flatMap(({ sections }) => sections)
  let count = 0
  const frames = steps.map((step) => {
    const before = { all, count }
    count += step.sections.length
    return stepFrame(step, before, plan, press)
  })
  return [...dividingFrame(plan, press), ...frames]
}

const stepFrame = (
  step: TeachingStep,
  before: Earlier,
  plan: Plan,
  { words: { teaching } }: Press,
): Frame => ({
  title: say(teaching.stepTitles, stepTitle(step)),
  lines: stepLines(step, plan).map((line) => ({
    label: teaching.stepLabels(line),
    text: say(teaching.stepLines, line),
  })),
  views: viewsOf(step, headOf(plan)),
  plan: { ...bareOf(plan), sections: [...step.sections] },
  before,
})

function dividingFrame(plan: Plan, { words }: Press): Frame[] {
  const working = workingSectionsOf(plan)
  if (working.length === 0) return []
  return [
    {
      title: words.teaching.divide,
      lines: working.map(({ numeral, name }) => ({
        label: numeral,
        text: words.common.workingTitle(name),
      })),
      views: ["front", "right"],
      plan: { ...bareOf(plan), workingSections: plan.workingSections },
      before: nothingEarlier,
    },
  ]
}

function frameBlock(
  { title, lines, views, plan, before }: Frame,
  number: number,
  setting: FrameSetting,
): Block {
  const { widthMm: wideMm, mirror, press } = setting
  const labelsMm = lines.map(({ label }) => widthMm(label, type.strong, press) + labelGapMm + roundingMm)
  const labelMm = Math.max(leastLabelMm, ...labelsMm)
  const titleLines = wrap(title, wideMm - numberMm, type.heading, press)
  const top = titleLines.length > 1 ? 4.6 : 7.4
  const head: Block = {
    heightMm: titleMm + Math.max(0, titleLines.length - 2) * 4.9,
    items: [
      rule([0, 0], [wideMm, 0], rulePt.medium),
      letters(String(number), [0, 9], number < 100 ? stepNumber : longNumber),
      ...titleLines.map((line, i) => letters(line, [numberMm, top + i * 4.9], type.heading)),
    ],
  }
  return lowered(
    stack([
      head,
      stepHeads(views, { plan, before }, { widthMm: wideMm, mirror, press }),
      ...lines.map(({ label, text }) => labelledRow(label, text, wideMm, press, labelMm)),
      { heightMm: underMm, items: [] },
    ]),
    1,
  )
}
