import { firstProblems, problemsOf } from "../checks/problem"
import { roundNumbers } from "../checks/roundNumbers"
import type { StartFigures } from "../document/salon"
import { startSchema } from "../document/salonSchema"
import type { Problem } from "../fields/problem"
import { z } from "../fields/zod"
import { type DocumentKind, readDocument } from "../file/readDocument"

export type OpenedStart = { ok: true; start: StartFigures } | { ok: false; problems: Problem[] }

const startDocument: DocumentKind = { name: "start", kind: "partline-start", version: 1, mostMb: 1 }
const fileSchema = z.strictObject({
  kind: z.literal(startDocument.kind),
  version: z.literal(1),
  start: startSchema,
})

/** What a salon is to start from, out of the text of a file, or what is wrong with it. */
export function openStart(text: string): OpenedStart {
  const read = readDocument(text, startDocument)
  if (!read.ok) return { ok: false, problems: [read.problem] }
  const parsed = fileSchema.safeParse(read.raw)
  if (!parsed.success) {
    const problems = parsed.error.issues.flatMap((issue) => problemsOf(issue, read.raw, "start"))
    return { ok: false, problems: firstProblems(problems) }
  }
  return { ok: true, start: parsed.data.start }
}

export const saveStart = (start: StartFigures) =>
  `${JSON.stringify(roundNumbers({ kind: startDocument.kind, version: startDocument.version, start }), null, 1)}\n`
