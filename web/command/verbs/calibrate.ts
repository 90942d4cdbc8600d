import type { Range } from "../../../geometry/hair/tradeFigures"
import { tradeFigures } from "../../../presets/formula/tradeFigures"
import {
  learn,
  learntFigures,
  priorBelief,
  scatterG,
  usualNeedOf,
  type Weighing,
} from "../../core/grams/calibration"
import { doubtfulWeighings } from "../../core/weighing/doubtfulWeighings"
import { trustCode, weighingsAsked } from "../../core/weighing/trust"
import { readWeighings } from "../../core/weighing/weighingCsv"
import { weighingsNeeded } from "../../core/weighing/weighingsNeeded"
import { say } from "../../words/say"
import { done, type Request, refuse, refuseTyped, type Verb } from "../input/verb"

export const calibrate: Verb = {
  usage: "FILE.csv",
  takesFile: true,
  options: [],
  run(request) {
    const w = request.words.weighing
    const text = readText(request)
    if (text === null) return refuseTyped(request, [{ code: "cannot-read-list", file: request.file }])
    const read = readWeighings(text)
    if (!read.ok) return refuse(...read.problems.map((problem) => say(w.list.problem, problem)))
    const prior = priorBelief(tradeFigures)
    const doubts = doubtfulWeighings(prior, read.rows)
    const trust = weighingsNeeded(prior, read.rows)
    const doubted = doubts.map((doubt) => ({ ...doubt, line: read.rows[doubt.index].line }))
    return {
      ...done({
        ...figuresOf(read.rows),
        doubtedLines: doubted.map(({ line }) => line),
        moreNeeded: weighingsAsked(trust, read.rows.length),
      }),
      problems: [...doubted.map(w.list.doubtful), say(w.learnt.trust, trustCode(trust, read.rows.length))],
    }
  },
}

function readText({ file, desk }: Request): string | null {
  try {
    return desk.readText(file)
  } catch {
    return null
  }
}

function figuresOf(rows: readonly Weighing[]) {
  const prior = priorBelief(tradeFigures)
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
