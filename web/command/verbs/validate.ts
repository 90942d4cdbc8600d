import { openPlan } from "../../core/file/planFile"
import { readFile } from "../input/openFile"
import { done, refuse, type Verb } from "../input/verb"

export const validate: Verb = {
  usage: "FILE",
  takesFile: true,
  options: [],
  run(request) {
    const read = readFile(request)
    if (!read.ok) return refuse(read.problem)
    const opened = openPlan(read.text)
    if (opened.ok) return done({ ok: true, version: opened.plan.version, problems: [] })
    const problems = opened.problems.map((problem) => ({
      ...problem,
      sentence: request.words.problems.sentence(problem),
    }))
    return {
      exit: 2,
      object: { ok: false, version: versionIn(read.text), problems },
      problems: problems.map(({ sentence }) => sentence),
    }
  },
}

/** The version a file says it has; null where it says none. */
function versionIn(text: string): number | null {
  try {
    const version: unknown = JSON.parse(text)?.version
    return typeof version === "number" ? version : null
  } catch {
    return null
  }
}
