import type { Plan } from "../../core/document/schema"
import { timingOf } from "../../core/teaching/teachingPlan"
import type { Words } from "../../words/en/words"
import { type LessonWords, lessonWords } from "../../words/every/lessonWords"
import { say } from "../../words/say"
import type { Fonts } from "../pens/fontFile"
import type { Page } from "../pens/page"
import { isWholeOnPaper } from "../pens/printable"
import type { Block } from "../setting/block"
import { cautionBlock } from "../setting/cautions"
import { type Flowing, flow } from "../setting/flow"
import { bodyMm, headedPages } from "../setting/headedPages"
import { paragraph, signed, titled, titledMm } from "../setting/paragraph"
import { type Press, pressOf } from "../setting/press"
import type { SheetOptions } from "../setting/sheetOptions"
import { beside, lowered, stack, sumMm } from "../setting/stack"
import { type } from "../setting/typesetting"
import { assessorsBox, checkList, faultTable } from "./assessment"
import { practiceHeads } from "./practiceHeads"
import { stepRows } from "./stepFrame"

const columnGapMm = 7
const bullet = { sign: "·", signMm: 3 }

/** What an educator hands to a class: the technique as it is drawn, with nothing of the client it was drawn for. */
export function handout(plan: Plan, options: SheetOptions, fonts: Fonts): Page[] {
  const { paper, mirror } = options
  const press = pressOf(options, fonts)
  const width = paper.widthMm - 2 * paper.marginMm
  const said = press.words.sheets.handout
  const { teaching } = press.words
  const lesson = lessonWords(plan, press.words)
  const begun = opening(lesson, width, press)
  const told = [
    ...titled(said.told, width, numbered(lesson.steps, width, press)),
    lowered(
      cautionBlock(
        width,
        { stops: "", lettersMissing: !isWholeOnPaper(plan, fonts), setting: type.body },
        press,
      ),
      4,
    ),
  ]
  const roomMm = bodyMm(paper) - sumMm([...begun, ...told]) - titledMm
  const blocks: Flowing[] = [
    ...begun,
    ...titled(said.draw, width, [practiceHeads(plan, { widthMm: width, mirror, press }, roomMm)]),
    ...told,
    ...titled(said.steps, width, stepRows(plan, { widthMm: width, mirror, press })),
    ...titled(
      said.timing,
      width,
      timingOf(plan).map((line) => dotted(say(teaching.times, line), width, press)),
    ),
    ...faultTable(lesson.faults, width, press),
    ...titled(said.checks, width, lesson.checks.length > 0 ? [checkList(lesson.checks, width, press)] : []),
    ...titled(said.assessor, width, [assessorsBox(width, press, options.learner)]),
  ]
  const sheet = { plan: taught(plan, press.words), paper, press, about: said.about }
  return headedPages(flow(blocks, bodyMm(paper)), sheet)
}

/** A plan by the name of what it teaches, without whom it was drawn for and when. */
export const taught = (plan: Plan, words: Words): Plan => ({
  ...plan,
  name: lessonWords(plan, words).title,
  client: { initials: "" },
  date: "",
})

/** What it is for, and what lies ready. */
function opening({ aim, tools }: LessonWords, width: number, press: Press): Block[] {
  const said = press.words.sheets.handout
  const half = (width - columnGapMm) / 2
  const lines = tools.map((line) => dotted(line, half, press))
  const middle = Math.ceil(lines.length / 2)
  return [
    paragraph(said.practise, width, press, type.strong),
    ...titled(said.aim, width, aim ? [paragraph(aim, width, press)] : []),
    ...titled(
      said.tools,
      width,
      lines.length > 0
        ? [
            beside(
              { block: stack(lines.slice(0, middle)), leftMm: 0 },
              { block: stack(lines.slice(middle)), leftMm: half + columnGapMm },
            ),
          ]
        : [],
    ),
  ]
}

const dotted = (text: string, width: number, press: Press) =>
  signed(bullet.sign, text, { width, signMm: bullet.signMm }, press)

const numberMm = 7

const numbered = (texts: readonly string[], width: number, press: Press) =>
  texts.map((text, i) => signed(press.figures.whole(i + 1), text, { width, signMm: numberMm }, press))
