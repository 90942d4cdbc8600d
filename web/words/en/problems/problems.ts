import type { HeadSizeFault } from "../../../../geometry/scalp/headSize"
import type { Expected, Problem, ProblemCode } from "../../../core/fields/problem"
import { say } from "../../say"
import type { Tools } from "../../tools"
import type { CommonWords } from "../common/common"
import { fieldSentences } from "./expected"
import { drawingFaults, fieldFaults, fileFaults } from "./faults"
import { fieldNames, rowNames } from "./fields"
import { placeText } from "./place"
import { refusals } from "./refusals"

/** What is wrong with a file or a field, and why a change cannot be. */
export const problems = (t: Tools, names: CommonWords) => {
  const { wanted, found } = fieldSentences(t)
  const faults = { ...fieldFaults(t), ...fileFaults(t), ...drawingFaults(t) }
  const fields = t.spelled({ fieldNames, rowNames })
  const isExpected = (code: ProblemCode): code is Extract<ProblemCode, Expected> => code.code in wanted
  const fault = (code: ProblemCode) =>
    isExpected(code) ? `${say(wanted, code)}, ${found(code.found)}` : say(faults, code)
  const located = (problem: Problem) => {
    const path = problem.code === "extra-field" ? problem.within : problem.path
    const place = path === "file" || problem.code === "newer-version" ? "" : placeText(path, fields)
    return place ? `${place}: ${fault(problem)}` : fault(problem)
  }
  return {
    done: {},
    /** A problem with its place in words, as a whole sentence. */
    sentence: (problem: Problem) => t.capital(`${located(problem)}.`),
    /** The same as a part of another sentence. */
    clause: located,
    /** Why no head has a size. */
    headSize: (size: HeadSizeFault) => t.capital(`${fault({ code: "head-size", ...size })}.`),
    refusals: refusals(t, located, names),
  }
}

export type ProblemsWords = ReturnType<typeof problems>
