import type { Consultation } from "../../core/document/consultation"

/** Writes what settles a stop, or takes it back. */
export type Settle = (
  code: "override" | "undo-override" | "add-letter" | "remove-letter",
  change: Partial<Consultation>,
) => void
