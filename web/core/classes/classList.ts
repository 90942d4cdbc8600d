import { fileStem } from "../file/fileName"
import { plainLetters } from "../text/plainLetters"
import { type ClassProblem, type ClassRow, readClassTable } from "./classTable"

/** Who is in a class: by what name, where the plan they drew lies, and what their own files are called. */
export type Learner = { line: number; name: string; file: string; stem: string }
export type ReadClass = { ok: true; learners: readonly Learner[] } | { ok: false; problems: ClassProblem[] }

/** Reads a class from its columns `name` and, where it is asked for, `file`. */
export function readClass(text: string, { withFile }: { withFile: boolean }): ReadClass {
  const table = readClassTable(text, withFile ? ["name", "file"] : ["name"])
  if (!table.ok) return table
  const learners = table.rows.map(learnerOf)
  const problems = [
    ...table.rows.flatMap((row) => nameProblems(row)),
    ...twiceIn(learners, "name", ({ stem }) => stem),
    ...(withFile ? fileProblems(learners) : []),
  ]
  return problems.length > 0 ? { ok: false, problems } : { ok: true, learners }
}

const learnerOf = ({ line, cell }: ClassRow): Learner => ({
  line,
  name: cell("name"),
  file: cell("file"),
  stem: fileStem(plainLetters(cell("name")), ""),
})

function nameProblems({ line, cell }: ClassRow): ClassProblem[] {
  const name = cell("name")
  if (name === "") return [{ code: "cell-empty", line, column: "name" }]
  const isUsable =
    fileStem(name, "") !== "" && !/[\p{Cc}\p{Cs}]/u.test(name) && [...name].length <= mostLetters
  return isUsable ? [] : [{ code: "no-file-name", line, found: name }]
}

const mostLetters = 80

const fileProblems = (learners: readonly Learner[]): ClassProblem[] => [
  ...learners.flatMap(({ line, name, file }): ClassProblem[] =>
    file === "" ? [{ code: "learner-without-file", line, name, found: "" }] : [],
  ),
  ...twiceIn(learners, "file", ({ file }) => file),
]

/** Two learners of one name would have one sheet between them. */
function twiceIn(
  learners: readonly Learner[],
  column: "name" | "file",
  keyOf: (learner: Learner) => string,
): ClassProblem[] {
  const keys = learners.map(keyOf)
  return learners.flatMap((learner, i): ClassProblem[] => {
    const first = keys.indexOf(keys[i])
    if (first === i || keys[i] === "") return []
    return [
      { code: "twice", line: learner.line, first: learners[first].line, column, found: learner[column] },
    ]
  })
}

/** The files that were named, each with whose it is: by the whole path, else by its name alone where only one has it. */
export function whoseFiles(
  learners: readonly Learner[],
  files: readonly string[],
): { ok: true; files: ReadonlyMap<Learner, string> } | { ok: false; problems: ClassProblem[] } {
  const found = new Map<Learner, string>()
  const taken = new Set<string>()
  const problems: ClassProblem[] = []
  for (const learner of learners) {
    const named = files.filter((file) => baseOf(file) === baseOf(learner.file))
    const file = files.find((each) => each === learner.file) ?? (named.length === 1 ? named[0] : undefined)
    if (file === undefined || taken.has(file))
      problems.push({
        code: "learner-without-file",
        line: learner.line,
        name: learner.name,
        found: learner.file,
      })
    else {
      found.set(learner, file)
      taken.add(file)
    }
  }
  for (const file of files) if (!taken.has(file)) problems.push({ code: "file-without-learner", found: file })
  return problems.length > 0 ? { ok: false, problems } : { ok: true, files: found }
}

const baseOf = (path: string) => path.slice(Math.max(path.lastIndexOf("/"), path.lastIndexOf("\\")) + 1)
