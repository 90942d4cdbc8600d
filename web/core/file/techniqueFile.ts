import type { Technique } from "../../../presets/techniques/technique"
import { firstProblems, problemsOf } from "../checks/problem"
import { roundNumbers } from "../checks/roundNumbers"
import type { Problem } from "../fields/problem"
import { type DocumentKind, readDocument } from "./readDocument"
import { techniqueRules } from "./techniqueRules"
import { techniqueKind, techniqueSchema, techniqueVersion } from "./techniqueSchema"

export type OpenedTechnique = { ok: true; technique: Technique } | { ok: false; problems: Problem[] }

const techniqueDocument: DocumentKind = {
  name: "technique",
  kind: techniqueKind,
  version: techniqueVersion,
  mostMb: 1,
}

/** The only way into the program for a technique: the text of a file or a link gives one to trust, or what is wrong with it. */
export function openTechnique(text: string): OpenedTechnique {
  const read = readDocument(text, techniqueDocument)
  if (!read.ok) return { ok: false, problems: [read.problem] }
  return check(read.raw)
}

/** A technique as it would come back from a file, or what keeps it from being one. */
export const checkTechnique = (technique: Technique): OpenedTechnique =>
  check(roundNumbers({ kind: techniqueKind, version: techniqueVersion, ...technique }))

function check(raw: unknown): OpenedTechnique {
  const parsed = techniqueSchema.safeParse(raw)
  if (!parsed.success) {
    const problems = parsed.error.issues.flatMap((issue) => problemsOf(issue, raw, "technique"))
    return { ok: false, problems: firstProblems(problems) }
  }
  const { kind: _, version: __, ...technique } = parsed.data
  const faults = techniqueRules(technique)
  if (faults.length > 0) return { ok: false, problems: firstProblems(faults) }
  return { ok: true, technique }
}

/** The text of a technique's file: fields in the order of the schema, numbers rounded as a plan's are. */
export const saveTechnique = (technique: Technique) => `${JSON.stringify(documentOf(technique), null, 1)}\n`

/** The same without a blank or a line too many, for a link. */
export const packTechnique = (technique: Technique) => JSON.stringify(documentOf(technique))

const documentOf = (technique: Technique) =>
  techniqueSchema.parse(roundNumbers({ kind: techniqueKind, version: techniqueVersion, ...technique }))
