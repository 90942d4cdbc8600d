/** One plan as the browser keeps it: the text of its file, and what a list of plans shows. */
export type PlanRecord = {
  id: string
  /** Different at each writing, by whichever tab. */
  rev: string
  /** When it was written, ISO 8601. */
  savedAt: string
  name: string
  initials: string
  text: string
}

/**
 * What a list of plans shows of each, whether a service has been recorded at its chair, and when it was opened since it
 * was written. The day of the plan and the weeks between visits are null where its file does not say.
 */
export type ShelfEntry = Pick<PlanRecord, "id" | "name" | "initials" | "savedAt"> & {
  served: boolean
  openedAt?: string
  day: string | null
  upkeepWeeks: number | null
}

/** A plan that was deleted. */
export type BinRecord = { id: string; record: PlanRecord; service: KeptService | undefined }
export type BinEntry = Pick<PlanRecord, "id" | "name" | "initials"> & { deletedAt: string }

/** The card of a client: its text, and what a list shows of it. */
export type CardRecord = { id: string; rev: string; savedAt: string; text: string }

/** Which card a plan belongs to. */
export type VisitRecord = { planId: string; cardId: string }

/** A technique of the salon's own as the browser keeps it: the text of its file. */
export type TechniqueRecord = { id: string; text: string }

/** A service at the chair as the browser keeps it beside its plan. What is in it is the clock's business. */
export type KeptService = {
  planId: string
  /** Different at each writing, by whichever window. */
  rev: string
  /** Begun and not ended. */
  running: boolean
  value: unknown
}
