import { openPlan } from "../../core/file/planFile"
import { readFile } from "../input/openFile"
import { done, refuse, type Verb } from "../input/verb"

export const validate: Verb = {
  usage: "FILE",
  summary: "Whether a file is a plan that can be opened, and what is wrong with it if not.",
  takesFile: true,
  options: {},
  run(request) {
    const read = readFile(request)
    if (!read.ok) return refuse(read.problem)
    const opened = openPlan(read.text)
    if (opened.ok) return done({ ok: true, version: opened.plan.version, problems: [] })
    const { problems } = opened
    return {
      exit: 2,
      object: { ok: false, version: versionIn(read.text), problems },
      problems: problems.map(({ expected }) => `${expected}.`),
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
