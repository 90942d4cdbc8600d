import type { Range } from "../../../geometry/hair/tradeFigures"
import type { FoilKind } from "../../../geometry/section/section"
import { joiningFigures } from "../../../presets/weighing/joiningFigures"
import { learntFigures } from "../../core/grams/calibration"
import { beliefOf } from "../../core/grams/startBelief"
import { type JoinedSalons, joinSalons } from "../../core/joining/joinSalons"
import type { LearnRow } from "../../core/joining/learnRow"
import { readRows } from "../../core/joining/readRows"
import { saveStart } from "../../core/joining/startFile"
import { foilKinds } from "../../core/kinds/kindRecords"
import { say } from "../../words/say"
import { readFile } from "../input/openFile"
import { done, type Request, refuse, refuseTyped, type Verb } from "../input/verb"

/** Several salons' lists joined into what a new salon starts from, with how far they differ. */
export const learnJoin: Verb = {
  usage: "FILE.csv... --out FILE.json",
  takesFile: "many",
  options: ["out"],
  run(request) {
    const { out } = request.options
    const files = request.files ?? []
    if (out === undefined) return refuseTyped(request, [{ code: "start-out-missing" }])
    const { leastSalons: least } = joiningFigures
    if (files.length < least)
      return refuseTyped(request, [{ code: "too-few-salons", salons: files.length, least }])
    const read = files.map((file) => readOne({ ...request, file }))
    const problems = read.flatMap((each) => ("problems" in each ? each.problems : []))
    if (problems.length > 0) return refuse(...problems)
    const salons = read.flatMap((each) => ("rows" in each ? [each.rows] : []))
    const twice = twiceIn(salons)
    if (twice)
      return refuseTyped(request, [{ code: "same-rows", file: files[twice.at], other: files[twice.first] }])
    const joined = joinSalons(salons)
    try {
      request.desk.writeBytes(out, new TextEncoder().encode(saveStart(joined.start)))
    } catch {
      return refuseTyped(request, [{ code: "cannot-write", path: out }])
    }
    return {
      ...done({ out, salons: salons.length, ...objectOf(joined) }),
      problems: [request.words.command.joined],
    }
  },
}

function readOne(request: Request): { rows: readonly LearnRow[] } | { problems: string[] } {
  const { learn } = request.words.command
  const file = readFile(request)
  if (!file.ok) return { problems: [file.problem] }
  const read = readRows(file.text)
  if (read.ok) return read
  return { problems: read.problems.map((problem) => `${request.file}: ${say(learn, problem)}`) }
}

/** The same salon twice would make salons look more alike than they are. */
function twiceIn(salons: readonly (readonly LearnRow[])[]): { at: number; first: number } | null {
  const texts = salons.map((rows) =>
    rows
      .map((row) => JSON.stringify(row))
      .sort()
      .join(),
  )
  const at = texts.findIndex((text, i) => texts.indexOf(text) < i)
  return at < 0 ? null : { at, first: texts.indexOf(texts[at]) }
}

/** Each figure for a new salon, 80 % save where it says two thirds, and how far salons differ in it, one standard deviation. */
function objectOf({ start, spread }: JoinedSalons) {
  const belief = start.grams && beliefOf(start.grams)
  const figures = belief && learntFigures(belief)
  const share = (at: number) => spread.grams?.shares[at] ?? 0
  return {
    weighings: spread.grams?.weighings ?? 0,
    perFoilG: figures && { ...meanAndRange(figures.lossG), betweenSalonsShare: share(0) },
    soak: figures && { ...meanAndRange(figures.soakGPerG), betweenSalonsShare: share(1) },
    coatMgCm2: figures && { ...meanAndRange(figures.coatMgPerCm2), betweenSalonsShare: share(2) },
    scatterShare: start.grams?.scatterShare ?? null,
    strands: spread.halfTime?.strands ?? 0,
    halfTimeMin: spread.halfTime && {
      mean: Math.exp(spread.halfTime.mean),
      twoThirds: spread.halfTime.halfTimeMin,
      betweenSalonsShare: Math.sqrt(spread.halfTime.between),
    },
    paceMin: Object.fromEntries(foilKinds.map((kind) => [kind, paceOf(kind, spread)])),
  }
}

function paceOf(kind: FoilKind, { pace }: JoinedSalons["spread"]) {
  const joined = pace[kind]
  return (
    joined && {
      ...meanAndRange(joined.paceMin),
      salons: joined.groups,
      betweenSalonsShare: Math.sqrt(joined.between),
    }
  )
}

const meanAndRange = ({ low, mid, high }: Range) => ({ mean: mid, low, high })
