import type { Days } from "../../../core/cautions/asking/questions"
import type { Clearance } from "../../../core/cautions/clearance"
import type { Consultation as Known } from "../../../core/document/consultation"
import type { Words } from "../../../words/en/words"
import type { CodeOf } from "../../../words/say"

/** What undo calls a change of the consultation. */
export type ClientDone = CodeOf<Words["client"]["done"]>
/** Writes a change of the consultation under its label; whether it was taken. */
export type Write = (done: ClientDone["code"], change: Partial<Known>) => boolean
export type PartProps = { known: Known; write: Write }
/** What the questions need besides: the days answers are held against, and what is missing. */
export type AskProps = { known: Known; days: Days; told: Clearance }
