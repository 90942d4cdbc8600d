import { planVersion } from "../document/planKind"

/** Turns the raw contents of one version into the next. Pure; it may trust nothing but the version. */
export type Lift = (raw: unknown) => unknown

/** The step from each version to the next, by the version it starts from. There has been one version so far. */
const lifts: Readonly<Record<number, Lift>> = {}

export function liftToPresent(raw: unknown, version: number): unknown {
  let lifted = raw
  for (let from = version; from < planVersion; from++) lifted = lifts[from](lifted)
  return lifted
}
