import { isGroup } from "../core/checks/problem"
import { newId } from "../core/document/newId"
import type { Plan } from "../core/document/schema"
import { writePlan } from "../core/file/planFile"
import { NotKeptError } from "./notKept"
import type { PlanRecord, ShelfEntry } from "./records"

/** A plan as it is kept; one that would not be read again is not written. */
export function toRecord(plan: Plan): PlanRecord {
  const written = writePlan(plan)
  if (!written.ok) throw new NotKeptError({ code: "not-in-order", what: "plan", problem: written.problem })
  return {
    id: plan.id,
    rev: newId(),
    savedAt: new Date().toISOString(),
    name: plan.name,
    initials: plan.client.initials,
    text: written.text,
  }
}

export const entryOf = ({ id, name, initials, savedAt, text }: PlanRecord): ShelfEntry => ({
  id,
  name,
  initials,
  savedAt,
  served: text.includes('"service"'),
  ...toldIn(text),
})

/** A line's end cannot stand within a JSON string, so these find the fields themselves: of the plan, and of what was asked. */
const dayForm = /\n "date": "(\d{4}-\d{2}-\d{2})"/
const weeksForm = /\n {2}"upkeepWeeks": (\d+(?:\.\d+)?)/

function toldIn(text: string): Pick<ShelfEntry, "day" | "upkeepWeeks"> {
  const weeks = weeksForm.exec(text)
  return { day: dayForm.exec(text)?.[1] ?? null, upkeepWeeks: weeks ? Number(weeks[1]) : null }
}

export const isRecord = (value: unknown): value is PlanRecord =>
  isGroup(value) &&
  ["id", "rev", "savedAt", "name", "initials", "text"].every((field) => typeof value[field] === "string")
