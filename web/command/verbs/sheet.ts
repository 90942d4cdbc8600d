import { fontFiles } from "../../sheets/pens/loadFonts"
import type { PaperName } from "../../sheets/pens/page"
import { layoutPlan, toPdf } from "../../sheets/printPlan"
import { sheetNames } from "../../sheets/sheetKinds"
import { readPlan } from "../input/openFile"
import { done, refuse, type Verb } from "../input/verb"

const paperNames: readonly PaperName[] = ["a4", "letter"]
const views = ["facing", "mirror"] as const

export const sheet: Verb = {
  usage: `FILE --kind ${sheetNames.join("|")} --out FILE.pdf [--paper a4|letter] [--front facing|mirror]`,
  summary: "A sheet of a plan as PDF.",
  takesFile: true,
  options: {
    kind: sheetNames.join(", "),
    paper: "a4 or letter; a4 if not given",
    out: "where to write the PDF",
    front: "the front as you face the client, or as seen in the mirror; facing if not given",
  },
  async run(request) {
    const { options, desk } = request
    const sheet = sheetNames.find((each) => each === options.kind)
    const paper = paperNames.find((each) => each === (options.paper ?? "a4"))
    const front = views.find((each) => each === (options.front ?? "facing"))
    const { out } = options
    if (!sheet || !paper || !front || out === undefined)
      return refuse(
        ...(sheet ? [] : [expected("kind", sheetNames, options)]),
        ...(paper ? [] : [expected("paper", paperNames, options)]),
        ...(front ? [] : [expected("front", views, options)]),
        ...(out === undefined ? ["--out is missing: expected the path of the PDF to write."] : []),
      )
    const read = readPlan(request)
    if (!read.ok) return refuse(...read.problems)
    const printed = await layoutPlan(read.plan, { sheet, paper, mirror: front === "mirror" }, (weight) =>
      desk.readFont(fontFiles[weight]),
    )
    try {
      desk.writeBytes(out, toPdf(printed.pages, read.plan, printed.fonts))
    } catch {
      return refuse(`--out: "${out}" cannot be written: expected a path in a folder that exists.`)
    }
    return done({ out, pages: printed.pages.length })
  },
}

const expected = (name: string, known: readonly string[], options: Readonly<Record<string, string>>) =>
  `--${name}: expected ${known.slice(0, -1).join(", ")} or ${known.at(-1)}, found ${options[name] === undefined ? "nothing" : `"${options[name]}"`}.`
