import type { Consultation as Known } from "../../../core/document/consultation"

/** Writes a change of the consultation under its label; whether it was taken. */
export type Write = (label: string, change: Partial<Known>) => boolean
export type PartProps = { known: Known; write: Write }
