import { isGroup, nameOf, type Problem, problemAt } from "../checks/problem"

/** A kind of document that Partline keeps in files: what it is called, and which versions of it can be read. */
export type DocumentKind = { name: string; kind: string; version: number; mostMb: number }
export type ReadDocument = { ok: true; raw: unknown; version: number } | { ok: false; problem: Problem }

/** The text of a file as raw fields of the kind expected and of a version that can be read; else the one reason why not. */
export function readDocument(text: string, document: DocumentKind): ReadDocument {
  const read = readJson(text, document)
  if (!read.ok) return read
  const problem = versionProblem(read.raw, document)
  return problem ? { ok: false, problem } : { ok: true, raw: read.raw, version: versionOf(read.raw) }
}

const refuse = (sentence: string) => ({ ok: false as const, problem: problemAt([], sentence) })

const megabyte = 1024 * 1024

function readJson(text: string, { name, mostMb }: DocumentKind) {
  if (text.length > mostMb * megabyte)
    return refuse(
      `expected a ${name} of at most ${mostMb} MB, found ${Math.ceil(text.length / megabyte)} MB; is it another file?`,
    )
  if (text.trim() === "") return refuse(`the file is empty: expected a ${name} saved by Partline`)
  try {
    return { ok: true as const, raw: JSON.parse(text.replace(/^\uFEFF/, "")) as unknown }
  } catch {
    return refuse(
      noNumberIn(text) ??
        `the file is cut short or is not a ${name}: expected the JSON text that Partline saves; save it again where it was made`,
    )
  }
}

/** JSON has no word for what is no number, but careless programs write one; the field before it is named. */
function noNumberIn(text: string): string | null {
  const [, field, word] = /"(\w{1,40})"\s*:\s*(-?(?:NaN|Infinity))\b/.exec(text) ?? []
  return field ? `${nameOf(field)}: expected a number, found ${word}` : null
}

const versionOf = (raw: unknown) =>
  isGroup(raw) && typeof raw.version === "number" ? raw.version : Number.NaN

function versionProblem(raw: unknown, { name, kind, version: known }: DocumentKind): Problem | null {
  if (!isGroup(raw) || raw.kind !== kind)
    return problemAt([], `this is not a Partline ${name}: expected "kind": "${kind}"`)
  const version = versionOf(raw)
  if (!Number.isInteger(version) || version < 1)
    return problemAt(["version"], `expected a whole number, ${known} at present`)
  if (version <= known) return null
  const newer = `this file is version ${version}; this Partline reads up to ${known}`
  return { path: "version", expected: `${newer}: open it with a newer Partline` }
}
