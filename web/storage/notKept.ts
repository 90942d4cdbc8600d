import type { KeptThing, NotKept } from "../core/fields/notKept"

/** Why the browser has not kept a thing, by what it threw. */
export function whyNotKept(error: unknown, what: KeptThing = "plan"): NotKept {
  const name = error instanceof Error || error instanceof DOMException ? error.name : ""
  if (error instanceof NotKeptError) return error.why
  if (name === "QuotaExceededError") return { code: "full", what }
  if (name === "BlockedError") return { code: "blocked", what }
  if (name === "VersionError") return { code: "newer-shelf", what }
  if (name === "ReferenceError" || name === "SecurityError") return { code: "private-window", what }
  return { code: "refused-by-browser", what, error: name }
}

/** Thrown within a writing that must not be: another tab has been at the plan since this one read it. */
export class NotKeptError extends Error {
  readonly why: NotKept
  constructor(why: NotKept) {
    super(why.code)
    this.why = why
  }
}
