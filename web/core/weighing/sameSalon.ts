import { roundNumbers } from "../checks/roundNumbers"
import type { Salon } from "../document/salon"

/** Whether two salons would rule a plan alike, once a file has rounded their numbers. */
export const isSameSalon = (a: Salon, b: Salon) => inOrder(a) === inOrder(b)

export const sameLearnt = (a: Salon["learnt"], b: Salon["learnt"]) => inOrder(a) === inOrder(b)

export const sameStart = (a: Salon["start"], b: Salon["start"]) => inOrder(a ?? null) === inOrder(b ?? null)

const inOrder = (value: unknown): string =>
  JSON.stringify(roundNumbers(value), (_, part) =>
    isFields(part)
      ? Object.fromEntries(Object.entries(part).sort(([one], [other]) => (one < other ? -1 : 1)))
      : part,
  )

const isFields = (value: unknown): value is object =>
  typeof value === "object" && value !== null && !Array.isArray(value)
