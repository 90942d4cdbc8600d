import { fitAxes } from "../../../geometry/scalp/fit"
import { hairlineForms } from "../../../geometry/scalp/hairlineLandmarks"
import { type HeadSize, HeadSizeError } from "../../../geometry/scalp/headSize"
import { headFigures } from "../../../presets/client/headSizes"
import type { Plan } from "../document/schema"
import { plainLetters } from "../text/plainLetters"
import type { Learner } from "./classList"
import { type ClassProblem, type ClassRow, readClassTable } from "./classTable"

type ReadHeads =
  | { ok: true; heads: ReadonlyMap<Learner, Plan["head"]> }
  | { ok: false; problems: ClassProblem[] }

const caliper = ["length", "breadth", "height"] as const
const tape = ["around", "over", "front-to-nape"] as const

/**
 * Reads the heads of a class: `name`, and in mm either `length`, `breadth`, `height` or `around`, `over`, `front-to-nape`;
 * `hairline` where it is not round. Whoever has no measures at all works on the usual head.
 */
export function readHeads(text: string, learners: readonly Learner[]): ReadHeads {
  const table = readClassTable(text, ["name"])
  if (!table.ok) return table
  const heads = new Map<Learner, Plan["head"]>()
  const lines = new Map<Learner, number>()
  const problems: ClassProblem[] = []
  for (const row of table.rows) {
    const name = row.cell("name")
    const learner = learners.find((each) => plainLetters(each.name) === plainLetters(name))
    const first = learner && lines.get(learner)
    if (!learner) problems.push({ code: "not-in-class", line: row.line, found: name })
    else if (first !== undefined)
      problems.push({ code: "twice", line: row.line, first, column: "name", found: name })
    else {
      lines.set(learner, row.line)
      const read = headOfRow(row)
      if ("problems" in read) problems.push(...read.problems)
      else if (read.head) heads.set(learner, read.head)
    }
  }
  return problems.length > 0 ? { ok: false, problems } : { ok: true, heads }
}

type ReadHead = { head: Plan["head"] | null } | { problems: ClassProblem[] }

function headOfRow(row: ClassRow): ReadHead {
  const { line, cell } = row
  const given = [caliper, tape].filter((columns) => columns.some((column) => cell(column) !== ""))
  if (given.length > 1) return { problems: [{ code: "measures", line }] }
  const typed = cell("hairline").toLowerCase() || "round"
  const form = hairlineForms.find((each) => each === typed)
  if (!form) return { problems: [{ code: "no-hairline", line, found: typed, known: hairlineForms }] }
  const [columns] = given
  if (!columns) return cell("hairline") === "" ? { head: null } : { problems: [{ code: "measures", line }] }
  const problems = columns.flatMap((column) => measureProblems(row, column))
  if (problems.length > 0) return { problems }
  const [first, second, third] = columns.map((column) => numberIn(cell(column)))
  const size: HeadSize =
    columns === caliper
      ? { kind: "caliper", lengthMm: first, breadthMm: second, heightMm: third }
      : { kind: "tape", aroundMm: first, overMm: second, frontToNapeMm: third }
  const fault = faultOf(size)
  return fault ? { problems: [{ code: "head-size", line, fault }] } : { head: { size, hairline: { form } } }
}

function measureProblems({ line, cell }: ClassRow, column: string): ClassProblem[] {
  const found = cell(column)
  if (found === "") return [{ code: "cell-empty", line, column }]
  return numberIn(found) > 0 ? [] : [{ code: "no-number", line, column, found }]
}

/** A number with a point or a comma, in millimetres, and nothing else. */
const numberIn = (text: string) =>
  /^\d+([.,]\d+)?$/.test(text) ? Number(text.replace(",", ".")) : Number.NaN

/** Why no head has this size; null where one has. */
function faultOf(size: HeadSize) {
  try {
    fitAxes(size, headFigures)
    return null
  } catch (fault) {
    if (fault instanceof HeadSizeError) return fault.fault
    throw fault
  }
}
