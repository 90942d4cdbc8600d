import type { Range } from "../../../geometry/hair/tradeFigures"
import { tradeFigures } from "../../../presets/formula/tradeFigures"
import { numberText } from "../../core/text/numberText"
import {
  learn,
  learntFigures,
  priorBelief,
  scatterG,
  usualNeedOf,
  type Weighing,
} from "../../core/weighing/calibration"
import { type Doubt, doubtfulWeighings } from "../../core/weighing/doubtfulWeighings"
import { trustWords } from "../../core/weighing/trustWords"
import { readWeighings } from "../../core/weighing/weighingCsv"
import { weighingsNeeded } from "../../core/weighing/weighingsNeeded"
import { done, type Request, refuse, type Verb } from "../input/verb"

export const calibrate: Verb = {
  usage: "FILE.csv",
  summary:
    "Grams a foil, soak and coat learnt from weighed foils or bowls (columns hairG,strandAreaCm2,productG and, for bowls, foils), with 80 % ranges.",
  takesFile: true,
  options: {},
  run(request) {
    const text = readText(request)
    if (text === null)
      return refuse(`"${request.file}" cannot be read: expected the path of a list of weighings, CSV.`)
    const read = readWeighings(text)
    if (!read.ok) return refuse(...read.problems)
    const prior = priorBelief(tradeFigures)
    const doubts = doubtfulWeighings(prior, read.rows)
    const trust = weighingsNeeded(prior, read.rows)
    const doubted = doubts.map((doubt) => ({ ...doubt, line: read.rows[doubt.index].line }))
    return {
      ...done({
        ...figuresOf(read.rows),
        doubtedLines: doubted.map(({ line }) => line),
        moreNeeded: trust.more,
      }),
      problems: [...doubted.map(doubtWords), trustWords(trust)],
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

const doubtWords = ({ line, weighedG, expectedG }: Doubt & { line: number }) =>
  `Line ${line} is doubtful: ${numberText(weighedG, 1)} g weighed, about ${numberText(expectedG, 1)} g expected by the others. Check it or leave it out.`
