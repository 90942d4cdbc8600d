import { planVersion } from "../document/planKind"
import { liftConsultation1 } from "./liftConsultation1"
import { liftService1 } from "./liftService1"

/** Turns the raw contents of one version into the next. Pure; it may trust nothing but the version. */
export type Lift = (raw: unknown) => unknown

/** The step from each version to the next, by the version it starts from: parts of a plan one after the other. */
const lifts: Readonly<Record<number, readonly Lift[]>> = {
  1: [liftService1, liftConsultation1],
}

export function liftToPresent(raw: unknown, version: number): unknown {
  let lifted = raw
  for (let from = version; from < planVersion; from++)
    for (const lift of lifts[from] ?? []) lifted = lift(lifted)
  return isGroup(lifted) && version < planVersion ? { ...lifted, version: planVersion } : lifted
}

const isGroup = (raw: unknown): raw is object => typeof raw === "object" && raw !== null
