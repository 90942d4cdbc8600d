import type { PaperName } from "../../../presets/sheets/papers"
import { markedSheet, type ToMark } from "../../sheets/handout/markedSheet"
import { optionsOf } from "../../sheets/optionsOf"
import { fontFiles, loadFonts } from "../../sheets/pens/loadFonts"
import { toPdf } from "../../sheets/printPlan"
import { type Language, loadWords } from "../../words/every/languages"
import { pathIn } from "./openFolder"
import type { Request } from "./verb"
import { type Made, pause } from "./writeFiles"

/** A sheet to mark for each learner, as PDF, in the language of the sheets. */
export async function assessmentSheets(
  learners: readonly (ToMark & { stem: string })[],
  { folder, paper, language }: { folder: string; paper: PaperName; language: Language },
  { desk, words }: Request,
): Promise<Made[]> {
  const [fonts, told] = await Promise.all([
    loadFonts((weight) => desk.readFont(fontFiles[weight])),
    loadWords(language),
  ])
  const made: Made[] = []
  for (const learner of learners) {
    const options = optionsOf(learner.plan, { paper, mirror: false, language, words: told })
    const bytes = toPdf(markedSheet(learner, options, fonts), fonts)
    made.push({ path: pathIn(folder, `${learner.stem}.pdf`), bytes })
    desk.progress?.(words.command.progress(made.length, learners.length))
    await pause()
  }
  return made
}
