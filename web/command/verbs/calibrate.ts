import type { Range } from "../../../geometry/hair/tradeFigures"
import type { StartFigures } from "../../core/document/salon"
import { learn, learntFigures, scatterG, usualNeedOf, type Weighing } from "../../core/grams/calibration"
import { startBelief } from "../../core/grams/startBelief"
import { openStart } from "../../core/joining/startFile"
import type { Belief } from "../../core/statistics/regression"
import { doubtfulWeighings } from "../../core/weighing/doubtfulWeighings"
import { trustCode, weighingsAsked } from "../../core/weighing/trust"
import { readWeighings } from "../../core/weighing/weighingCsv"
import { weighingsNeeded } from "../../core/weighing/weighingsNeeded"
import { say } from "../../words/say"
import { readFile } from "../input/openFile"
import { done, type Request, refuse, refuseTyped, type Verb } from "../input/verb"

export const calibrate: Verb = {
  usage: "FILE.csv [--start FILE.json]",
  takesFile: true,
  options: ["start"],
  run(request) {
    const w = request.words.weighing
    const text = readText(request)
    if (text === null) return refuseTyped(request, [{ code: "cannot-read-list", file: request.file }])
    const read = readWeighings(text)
    if (!read.ok) return refuse(...read.problems.map((problem) => say(w.list.problem, problem)))
    const started = readStart(request)
    if (!started.ok) return refuse(...started.problems)
    const prior = startBelief(started.start)
    const doubts = doubtfulWeighings(prior, read.rows)
    const trust = weighingsNeeded(prior, read.rows)
    const doubted = doubts.map((doubt) => ({ ...doubt, line: read.rows[doubt.index].line }))
    return {
      ...done({
        ...figuresOf(read.rows, prior),
        doubtedLines: doubted.map(({ line }) => line),
        moreNeeded: weighingsAsked(trust, read.rows.length),
      }),
      problems: [...doubted.map(w.list.doubtful), say(w.learnt.trust, trustCode(trust, read.rows.length))],
    }
  },
}

type Started = { ok: true; start: StartFigures | undefined } | { ok: false; problems: readonly string[] }

/** What other salons learnt, where it was given. */
function readStart(request: Request): Started {
  const file = request.options.start
  if (file === undefined) return { ok: true, start: undefined }
  const read = readFile({ ...request, file })
  if (!read.ok) return { ok: false, problems: [read.problem] }
  const opened = openStart(read.text)
  if (opened.ok) return opened
  return { ok: false, problems: opened.problems.map(request.words.problems.sentence) }
}

function readText({ file, desk }: Request): string | null {
  try {
    return desk.readText(file)
  } catch {
    return null
  }
}

function figuresOf(rows: readonly Weighing[], prior: Belief) {
  const belief = learn(prior, rows)
  const { lossG, soakGPerG, coatMgPerCm2 } = learntFigures(belief)
  return {
    n: rows.length,
    perFoilG: meanAndRange(lossG),
    soak: meanAndRange(soakGPerG),
    coatMgCm2: meanAndRange(coatMgPerCm2),
    residualG: scatterG(belief, usualNeedOf(rows), prior),
    df: 2 * belief.shape,
  }
}

const meanAndRange = ({ low, mid, high }: Range) => ({ mean: mid, low, high })
