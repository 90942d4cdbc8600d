import { paperNames } from "../../../presets/sheets/papers"
import { sheetNames } from "../../../presets/sheets/sheetNames"
import { clearanceOf } from "../../core/cautions/clearance"
import type { ArgumentProblem } from "../../core/command/argumentProblem"
import type { Plan } from "../../core/document/schema"
import { nowHere } from "../../session/nowHere"
import { fontFiles } from "../../sheets/pens/loadFonts"
import { layoutPlan, type PrintOptions, planAsHtml, toPdf } from "../../sheets/printPlan"
import { sheetKinds } from "../../sheets/sheetKinds"
import { readPlan } from "../input/openFile"
import { paperMeant } from "../input/paper"
import { knownLanguage } from "../input/spokenLanguage"
import { done, type Request, refuse, refuseTyped, type Verb } from "../input/verb"
import { clearanceFields } from "./check"

const fronts = ["facing", "mirror"] as const

export const sheet: Verb = {
  usage: `FILE --kind ${sheetNames.join("|")} --out FILE.pdf|FILE.html [--paper a4|letter] [--front facing|mirror] [--language TAG]`,
  takesFile: true,
  options: ["kind", "paper", "out", "front", "messages"],
  async run(request) {
    const { desk } = request
    const asked = askedFor(request.options)
    if (!asked.ok) return refuseTyped(request, asked.problems)
    const { out, print } = asked
    const read = readPlan(request)
    if (!read.ok) return refuse(...read.problems)
    const made = asked.isHtml ? await htmlFile(read.plan, print) : await pdfFile(read.plan, print, desk)
    try {
      desk.writeBytes(out, made.bytes)
    } catch {
      return refuseTyped(request, [{ code: "cannot-write", path: out }])
    }
    const told = clearanceOf(read.plan, nowHere())
    return {
      ...done({ ...clearanceFields(told, request.words), out, pages: made.pages }),
      problems: [request.words.cautions.clearance.sentence(told)],
    }
  },
}

async function pdfFile(plan: Plan, print: PrintOptions, desk: Request["desk"]) {
  const { sheet: laid, fonts } = await layoutPlan(plan, print, (weight) => desk.readFont(fontFiles[weight]))
  return { bytes: toPdf(laid, fonts), pages: laid.pages.length }
}

/** A page for a browser is one, however long. */
async function htmlFile(plan: Plan, print: PrintOptions) {
  return { bytes: new TextEncoder().encode((await planAsHtml(plan, print)) ?? ""), pages: 1 }
}

/** Sheets that can be had as a page for a browser. */
const withPage = sheetNames.filter((name) => sheetKinds[name].toHtml)

type Asked =
  | { ok: true; out: string; isHtml: boolean; print: PrintOptions }
  | { ok: false; problems: readonly ArgumentProblem[] }

function askedFor({ kind, paper, front, language: tag, out }: Request["options"]): Asked {
  const language = knownLanguage(tag ?? "en-GB") ?? "en-GB"
  const isHtml = /\.html?$/i.test(out ?? "")
  const known = isHtml ? withPage : sheetNames
  const name = known.find((each) => each === kind)
  const size = paperMeant(paper, language)
  const side = fronts.find((each) => each === (front ?? "facing"))
  if (name && size && side && out !== undefined)
    return { ok: true, out, isHtml, print: { sheet: name, paper: size, mirror: side === "mirror", language } }
  return {
    ok: false,
    problems: [
      ...(name ? [] : [wrongChoice("kind", known, kind)]),
      ...(size ? [] : [wrongChoice("paper", paperNames, paper)]),
      ...(side ? [] : [wrongChoice("front", fronts, front)]),
      ...(out === undefined ? [{ code: "out-missing" as const }] : []),
    ],
  }
}

const wrongChoice = (
  option: string,
  known: readonly string[],
  typed: string | undefined,
): ArgumentProblem => ({ code: "not-a-choice", option, known, found: typed ?? null })
