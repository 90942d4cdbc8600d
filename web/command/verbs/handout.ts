import type { PaperName } from "../../../presets/sheets/papers"
import { readHeads } from "../../core/classes/classHeads"
import type { Learner } from "../../core/classes/classList"
import type { Plan } from "../../core/document/schema"
import type { TechniqueChoice } from "../../core/technique/techniqueChoices"
import { fontFiles } from "../../sheets/pens/loadFonts"
import { layoutPlan, toPdf } from "../../sheets/printPlan"
import { type Language, loadWords } from "../../words/every/languages"
import { classSentences, openClass } from "../input/openClass"
import { readFile } from "../input/openFile"
import { pathIn } from "../input/openFolder"
import { techniqueMeant } from "../input/openTechnique"
import { paperMeant, wrongPaper } from "../input/paper"
import { knownLanguage } from "../input/spokenLanguage"
import { done, type Outcome, problemsOf, type Request, refuse, refuseTyped, type Verb } from "../input/verb"
import { type Made, pause, writeFiles } from "../input/writeFiles"
import { laidOn } from "./lay"

/** The handout of a technique for each of a class, on the learner's own head where it was measured. */
export const handout: Verb = {
  usage: "TECHNIQUE --names class.csv --out FOLDER [--heads sizes.csv] [--paper a4|letter] [--language TAG]",
  takesFile: true,
  options: ["heads", "names", "paper", "out", "messages"],
  async run(request) {
    const { out, names, paper: typed, language: tag } = request.options
    const language = knownLanguage(tag ?? "en-GB") ?? "en-GB"
    const paper = paperMeant(typed, language)
    if (out === undefined || names === undefined || paper === null)
      return refuseTyped(request, [
        ...(names === undefined ? [{ code: "names-missing" as const }] : []),
        ...(out === undefined ? [{ code: "folder-out-missing" as const }] : []),
        ...(paper === null ? [wrongPaper(typed)] : []),
      ])
    const told = await loadWords(language)
    const found = techniqueMeant(request.file, request, told)
    const group = openClass(names, request, { withFile: false })
    if (!found.ok || !group.ok) return refuse(...problemsOf(found), ...problemsOf(group))
    const heads = headsOf(group.learners, request)
    if (!heads.ok) return refuse(...heads.problems)
    return write(group.learners, { ...heads, choice: found.choice, paper, language, out }, request)
  },
}

type Set = {
  heads: ReadonlyMap<Learner, Plan["head"]>
  choice: TechniqueChoice
  paper: PaperName
  language: Language
  out: string
}

/** All are made before one is written. */
async function write(learners: readonly Learner[], set: Set, request: Request): Promise<Outcome> {
  const { desk, words } = request
  const { heads, choice, paper, language, out } = set
  const made: (Made & { name: string; pages: number; head: "own" | "usual" })[] = []
  for (const learner of learners) {
    const head = heads.get(learner) ?? null
    const plan = laidOn(choice, head)
    if (!plan)
      return refuseTyped(request, [{ code: "no-room", name: choice.technique.name, learner: learner.name }])
    const print = { sheet: "technique", paper, mirror: false, language, learner: learner.name } as const
    const { sheet, fonts } = await layoutPlan(plan, print, (weight) => desk.readFont(fontFiles[weight]))
    made.push({
      path: pathIn(out, `${learner.stem}.pdf`),
      bytes: toPdf(sheet, fonts),
      name: learner.name,
      pages: sheet.pages.length,
      head: head ? "own" : "usual",
    })
    desk.progress?.(words.command.progress(made.length, learners.length))
    await pause()
  }
  const problem = writeFiles(made, desk, out)
  if (problem) return refuseTyped(request, [problem])
  return done({
    out,
    technique: choice.technique.id,
    handouts: made.map(({ path, name, pages, head }) => ({ name, file: path, pages, head })),
  })
}

function headsOf(learners: readonly Learner[], request: Request) {
  const { heads: file } = request.options
  if (file === undefined) return { ok: true as const, heads: new Map<Learner, Plan["head"]>() }
  const read = readFile({ ...request, file })
  if (!read.ok) return { ok: false as const, problems: [read.problem] }
  const heads = readHeads(read.text, learners)
  return heads.ok ? heads : { ok: false as const, problems: classSentences(file, heads.problems, request) }
}
