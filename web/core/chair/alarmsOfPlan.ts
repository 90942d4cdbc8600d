import type { Plan } from "../document/schema"

/** One touch of the red button; taken back where the tap was undone. */
export type Alarm = { wallAt: string; what: string; undone: boolean }

/** What the red button was touched for: outside of a service, then at the last one. */
export const alarmsOfPlan = ({ service, alarms = [] }: Plan): Alarm[] => [
  ...alarms.map((alarm) => ({ ...alarm, undone: false })),
  ...(service?.log ?? []).flatMap(({ tap, wallAt, undone }) =>
    tap.kind === "alarm" ? [{ wallAt, what: tap.what, undone }] : [],
  ),
]
