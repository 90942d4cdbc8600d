import { isGroup, problemAt } from "../checks/problem"
import type { DocumentName, FileCode, Problem } from "../fields/problem"

/** A kind of document that Partline keeps in files: what it is called, and which versions of it can be read. */
export type DocumentKind = { name: DocumentName; kind: string; version: number; mostMb: number }
export type ReadDocument = { ok: true; raw: unknown; version: number } | { ok: false; problem: Problem }

/** The text of a file as raw fields of the kind expected and of a version that can be read; else the one reason why not. */
export function readDocument(text: string, document: DocumentKind): ReadDocument {
  const read = readJson(text, document)
  if (!read.ok) return read
  const problem = versionProblem(read.raw, document)
  return problem ? { ok: false, problem } : { ok: true, raw: read.raw, version: versionOf(read.raw) }
}

const refuse = (code: FileCode) => ({ ok: false as const, problem: problemAt([], code) })

const megabyte = 1024 * 1024

function readJson(text: string, { name: document, mostMb }: DocumentKind) {
  if (text.length > mostMb * megabyte)
    return refuse({ code: "too-large", document, mostMb, foundMb: Math.ceil(text.length / megabyte) })
  if (text.trim() === "") return refuse({ code: "empty", document })
  try {
    return { ok: true as const, raw: JSON.parse(text.replace(/^\uFEFF/, "")) as unknown }
  } catch {
    return refuse(noNumberIn(text) ?? { code: "not-json", document })
  }
}

/** JSON has no word for what is no number, but careless programs write one; the field before it is named. */
function noNumberIn(text: string): FileCode | null {
  const [, field, word] = /"(\w{1,40})"\s*:\s*(-?(?:NaN|Infinity))\b/.exec(text) ?? []
  return field ? { code: "no-number", field, word } : null
}

const versionOf = (raw: unknown) =>
  isGroup(raw) && typeof raw.version === "number" ? raw.version : Number.NaN

function versionProblem(raw: unknown, { name: document, kind, version: known }: DocumentKind) {
  if (!isGroup(raw) || raw.kind !== kind) return problemAt([], { code: "another-kind", document, kind })
  const version = versionOf(raw)
  if (!Number.isInteger(version) || version < 1) return problemAt(["version"], { code: "version", known })
  return version > known ? problemAt(["version"], { code: "newer-version", version, known }) : null
}
