import type { ComparedPair, Comparison } from "../../core/compare/compare"
import { type Measured, measuredCriteria, type Tolerances } from "../../core/compare/differences"
import { type ComparisonCode, comparisonCodes, differencesBeyond } from "../../core/compare/remarks"
import type { Plan } from "../../core/document/schema"
import { type SectionNameCode, sectionNameOf } from "../../core/document/sectionNameCode"
import { stepTitle } from "../../core/teaching/stepLines"
import { type TeachingStep, teachingSteps } from "../../core/teaching/teachingSteps"
import { say } from "../../words/say"
import type { Fonts } from "../pens/fontFile"
import { type Item, type Page, type Sheet, tagged } from "../pens/page"
import type { Block } from "../setting/block"
import { type Flowing, flow } from "../setting/flow"
import { bodyMm, headedPages } from "../setting/headedPages"
import { fillIn, fillInMm, writingLines } from "../setting/labelledRow"
import { lineMm, paragraph, titled } from "../setting/paragraph"
import { type Press, pressOf } from "../setting/press"
import type { SheetOptions } from "../setting/sheetOptions"
import { beside, lowered, stack } from "../setting/stack"
import { letters, rectangle, rule, rulePt, shorten, strokes, type, wrap } from "../setting/typesetting"

/** What an assessor marks one learner on: the comparison of the plan that the learner drew with the model. */
export type ToMark = {
  /** The learner's plan, on whose head the model lies. */
  plan: Plan
  comparison: Comparison
  allowed: Tolerances
  /** What the model is called. */
  title: string
  learner: string
}

/** The sheet of one learner: what was measured stands there; how it was done is for the assessor to mark. */
export function markedSheet(marked: ToMark, options: SheetOptions, fonts: Fonts): Sheet {
  const { paper, language } = options
  const press = pressOf(options, fonts)
  const width = paper.widthMm - 2 * paper.marginMm
  const { comparing } = press.words
  const said = comparing.sheet
  const title = marked.title.trim() || press.words.sheets.heading.unnamed
  const whole = comparisonCodes(marked.comparison).map((code) => say<ComparisonCode>(comparing.whole, code))
  const blocks: Flowing[] = [
    whoAndWhen(marked.learner, width, press),
    paragraph(said.assumed, width, press, type.strong),
    ...whole.map((line) => paragraph(line, width, press)),
    ...titled(said.byCriteria, width, [criteriaTable(marked, width, press)]),
    ...stepTable(marked, width, press),
    ...titled(said.remarks, width, [stack([writingLines(2, width), signatures(width, press)])]),
  ]
  const head: Plan = { ...marked.plan, name: title, client: { initials: "" }, date: "" }
  const pages: Page[] = headedPages(flow(blocks, bodyMm(paper)), {
    plan: head,
    paper,
    press,
    about: said.about,
  })
  return { pages, title: `${said.about}: ${title}`, date: "", language }
}

const labelGapMm = 3

/** A label and the line behind it, with what is known already upon it. */
function field(
  label: string,
  { from, to, text = "" }: { from: number; to: number; text?: string },
  press: Press,
) {
  const lineMmFrom = from + fieldLabelMm
  return [
    ...fillIn(
      shorten(label, fieldLabelMm - labelGapMm, type.body, press),
      { from, lineFrom: lineMmFrom, to },
      fillInMm,
    ),
    ...(text
      ? [letters(shorten(text, to - lineMmFrom, type.strong, press), [lineMmFrom, fillInMm - 2], type.strong)]
      : []),
  ]
}
const fieldLabelMm = 34

const whoAndWhen = (learner: string, width: number, press: Press): Block => ({
  heightMm: fillInMm + 2,
  items: tagged(
    [
      ...field(press.words.comparing.sheet.learner, { from: 0, to: 0.6 * width - 4, text: learner }, press),
      ...field(press.words.comparing.sheet.date, { from: 0.6 * width, to: width }, press),
    ],
    "P",
  ),
})

const signatures = (width: number, press: Press): Block => ({
  heightMm: fillInMm + 2,
  items: tagged(
    [
      ...field(press.words.comparing.sheet.assessor, { from: 0, to: width / 2 - 4 }, press),
      ...field(press.words.comparing.sheet.signature, { from: width / 2, to: width }, press),
    ],
    "P",
  ),
})

const betweenMm = 8

/** How often each criterion is met, and within what: in two columns. */
function criteriaTable({ comparison, allowed }: ToMark, width: number, press: Press): Block {
  const { criteria, sheet } = press.words.comparing
  const columnMm = (width - betweenMm) / 2
  const rows = comparison.score.map(({ criterion, met, of }) => {
    const within = isMeasured(criterion) ? toleranceText(criterion, allowed[criterion], press) : ""
    return tableRow([criteria[criterion], within, sheet.metOf(met, of)], columnMm, press)
  })
  const head = tableRow([sheet.criterion, sheet.tolerance, sheet.met], columnMm, press, true)
  const half = Math.ceil(rows.length / 2)
  return beside(
    { block: stack([head, ...rows.slice(0, half)]), leftMm: 0 },
    { block: stack([head, ...rows.slice(half)]), leftMm: columnMm + betweenMm },
  )
}

const isMeasured = (criterion: string): criterion is Measured =>
  measuredCriteria.some((each) => each === criterion)

function toleranceText(criterion: Measured, value: number, { figures }: Press): string {
  if (criterion === "angle") return `± ${figures.number(value, 1)}°`
  if (criterion === "length") return `± ${figures.number(value, 1)} %`
  return `± ${figures.mm(value, 1)}`
}

function tableRow(
  cells: readonly [string, string, string],
  width: number,
  press: Press,
  isHead = false,
): Block {
  const setting = isHead ? type.strong : type.body
  const lefts = [0, 0.56 * width, 0.81 * width]
  const rooms = [0.56 * width - 2, 0.25 * width - 2, 0.19 * width]
  return {
    heightMm: lineMm + 1.2,
    items: [
      ...tagged(
        cells.map((cell, i) => letters(shorten(cell, rooms[i], setting, press), [lefts[i], 4], setting)),
        "P",
      ),
      rule([0, lineMm + 1], [width, lineMm + 1], rulePt.hair),
    ],
  }
}

const boxMm = 5
/** Room between the text of a row and the rules over and under it. */
const aboveMm = 1.3
const columnMm = 22
const marksMm = 3 * columnMm

/** A row a step: what was measured of its sections, and a box for each way it may have been done. */
function stepTable(marked: ToMark, width: number, press: Press): Flowing[] {
  const { sheet } = press.words.comparing
  const model: Plan = { ...marked.plan, sections: marked.comparison.model }
  const again = boxHeads(width, press)
  const rows = teachingSteps(model).map((step, i) => stepRow(step, i, { marked, width, press }))
  const [first, ...rest] = rows
  if (!first) return []
  const [top] = titled(sheet.steps, width, [stack([again, first])])
  return [top, ...rest.map((block) => ({ ...block, again }))]
}

function boxHeads(width: number, press: Press): Block {
  const { unaided, withHelp, notYet, measured } = press.words.comparing.sheet
  const heads = [unaided, withHelp, notYet].map((head, i) =>
    letters(
      shorten(head, columnMm - 1, type.smallStrong, press),
      [width - marksMm + i * columnMm, 4],
      type.smallStrong,
    ),
  )
  return {
    heightMm: lineMm + 1.6,
    items: [
      ...tagged([letters(measured, [0, 4], type.smallStrong), ...heads], "P"),
      rule([0, lineMm + 1.4], [width, lineMm + 1.4], rulePt.fine),
    ],
  }
}

type Around = { marked: ToMark; width: number; press: Press }

function stepRow(step: TeachingStep, index: number, { marked, width, press }: Around): Block {
  const room = width - marksMm - 4
  const { words, figures } = press
  const title = `${figures.whole(index + 1)}. ${say(words.teaching.stepTitles, stepTitle(step))}`
  const titleLines = wrap(title, room, type.strong, press)
  const heading: Block = {
    heightMm: titleLines.length * lineMm,
    items: tagged(
      titleLines.map((line, i) => letters(line, [0, 3.6 + i * lineMm], type.strong)),
      "P",
    ),
  }
  const remarks = remarksOf(step, marked.comparison, press).map((line) => paragraph(line, room, press))
  const text = lowered(stack([heading, ...remarks]), aboveMm)
  const heightMm = Math.max(text.heightMm, boxMm + aboveMm) + aboveMm
  const row = beside(
    { block: { ...text, heightMm }, leftMm: 0 },
    { block: { heightMm, items: boxes() }, leftMm: width - marksMm },
  )
  return { ...row, items: [...row.items, rule([0, heightMm], [width, heightMm], rulePt.hair)] }
}

const boxes = (): Item[] =>
  [0, 1, 2].map((i) => strokes([rectangle(i * columnMm, aboveMm, boxMm, boxMm)], rulePt.medium, true))

/** What of a step is beyond tolerance or missing, a line a section; one line where nothing is. */
function remarksOf(step: TeachingStep, { pairs, missing }: Comparison, press: Press): string[] {
  const { comparing, common } = press.words
  const lines = step.sections.flatMap((section) => {
    const name = press.figures.capital(say<SectionNameCode>(common.sectionName, sectionNameOf(section)))
    if (missing.some(({ model }) => model.id === section.id)) return [`${name}: ${comparing.missing}`]
    const pair = pairs.find(({ model }) => model.id === section.id)
    const beyond = pair ? beyondText(pair, press) : ""
    return beyond ? [`${name}: ${beyond}`] : []
  })
  return lines.length > 0 ? lines : [press.figures.capital(comparing.within)]
}

/** What of one section is beyond tolerance, as a list; nothing where all is within. */
export const beyondText = (pair: ComparedPair, { words }: Pick<Press, "words">): string =>
  differencesBeyond(pair)
    .map((code) => say(words.comparing.differs, code))
    .join("; ")
