import type { Expected, Problem, ProblemCode } from "../../../core/fields/problem"
import type { ProblemsWords } from "../../en/problems/problems"
import { say } from "../../say"
import type { Tools } from "../../tools"
import { fieldSentences } from "./expected"
import { drawingFaults, fieldFaults, fileFaults } from "./faults"
import { placeText } from "./place"
import { refusals } from "./refusals"

/** What is wrong with a file or a field, and why a change cannot be. */
export const problems = (t: Tools): ProblemsWords => {
  const { wanted, found } = fieldSentences(t)
  const faults = { ...fieldFaults(t), ...fileFaults(t), ...drawingFaults(t) }
  const isExpected = (code: ProblemCode): code is Extract<ProblemCode, Expected> => code.code in wanted
  const fault = (code: ProblemCode) =>
    isExpected(code) ? `${say(wanted, code)}, ${found(code.found)}` : say(faults, code)
  const located = (problem: Problem) => {
    const path = problem.code === "extra-field" ? problem.within : problem.path
    const place = path === "file" || problem.code === "newer-version" ? "" : placeText(path)
    return place ? `${place}: ${fault(problem)}` : fault(problem)
  }
  return {
    done: {},
    sentence: (problem) => t.capital(`${located(problem)}.`),
    clause: located,
    headSize: (size) => t.capital(`${fault({ code: "head-size", ...size })}.`),
    refusals: refusals(t, located),
  }
}
