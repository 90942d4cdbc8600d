import type { Section } from "../../../geometry/section/section"
import type { Plan } from "../../core/document/schema"
import { headOf } from "../../core/figures/measured"
import { workingSectionsOf } from "../../core/figures/workingSections"
import { type TeachingStep, teachingSteps } from "../../core/teaching/teachingSteps"
import { type StepLine, stepLines, stepTitle } from "../../core/teaching/teachingWords"
import type { PaperView } from "../../drawing/headDrawing"
import type { Fonts } from "../pens/fontFile"
import type { Block } from "../setting/block"
import { labelledRow } from "../setting/labelledRow"
import { beside, lowered, stack } from "../setting/stack"
import { letters, rule, rulePt, type Type, type, wrap } from "../setting/typesetting"
import { bareOf, headViews, twoViews } from "./stepViews"

export type FrameSetting = { widthMm: number; mirror: boolean; fonts: Fonts }
type Frame = {
  title: string
  lines: readonly StepLine[]
  views: readonly PaperView[]
  plan: Plan
  before: readonly Section[]
}

const stepNumber: Type = { sizePt: 26, weight: "semibold" }
const numberMm = 14
const titleMm = 11.5
const labelMm = 16.5
const scale = 0.18
const gutterMm = 7
const underMm = 3

/** One frame a step, two in a row: the working sections first where the head is divided. */
export function stepRows(plan: Plan, setting: FrameSetting): Block[] {
  const widthMm = (setting.widthMm - gutterMm) / 2
  const blocks = framesOf(plan).map((frame, i) => frameBlock(frame, i + 1, { ...setting, widthMm }))
  const rows = blocks.flatMap((_, i) => (i % 2 === 0 ? [blocks.slice(i, i + 2)] : []))
  return rows.map((row) => beside(...row.map((block, i) => ({ block, leftMm: i * (widthMm + gutterMm) }))))
}

function framesOf(plan: Plan): Frame[] {
  const steps = teachingSteps(plan)
  return [
    ...dividingFrame(plan),
    ...steps.map((step, i) =>
      stepFrame(
        step,
        steps.slice(0, i).flatMap(({ sections }) => sections),
        plan,
      ),
    ),
  ]
}

const stepFrame = (step: TeachingStep, before: readonly Section[], plan: Plan): Frame => ({
  title: stepTitle(step),
  lines: stepLines(step, plan),
  views: twoViews(step.rows[0], headOf(plan)),
  plan: { ...bareOf(plan), sections: [...step.sections] },
  before,
})

function dividingFrame(plan: Plan): Frame[] {
  const working = workingSectionsOf(plan)
  if (working.length === 0) return []
  return [
    {
      title: "Divide the head",
      lines: working.map(({ numeral, name }) => ({ label: numeral, text: name })),
      views: ["front", "right"],
      plan: { ...bareOf(plan), workingSections: plan.workingSections },
      before: [],
    },
  ]
}

function frameBlock(
  { title, lines, views, plan, before }: Frame,
  number: number,
  setting: FrameSetting,
): Block {
  const { widthMm, mirror, fonts } = setting
  const titleLines = wrap(title, widthMm - numberMm, type.heading, fonts).slice(0, 2)
  const top = titleLines.length > 1 ? 4.6 : 7.4
  const head: Block = {
    heightMm: titleMm,
    items: [
      rule([0, 0], [widthMm, 0], rulePt.medium),
      letters(String(number), [0, 9], stepNumber),
      ...titleLines.map((line, i) => letters(line, [numberMm, top + i * 4.9], type.heading)),
    ],
  }
  return lowered(
    stack([
      head,
      headViews(views, { plan, before }, { widthMm, scale, mirror, fonts }),
      ...lines.map(({ label, text }) => labelledRow(label, text, widthMm, fonts, labelMm)),
      { heightMm: underMm, items: [] },
    ]),
    1,
  )
}
