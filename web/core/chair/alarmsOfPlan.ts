import type { Plan } from "../document/schema"
import type { AlarmTap } from "../document/serviceRecord"

/** One touch of the red button; taken back where the tap was undone. */
export type Alarm = Omit<AlarmTap, "kind"> & { wallAt: string; undone: boolean }

/** The numbers on the map of the foils that an alarm is about. */
export const foilNumbers = (
  { foils = [] }: Pick<AlarmTap, "foils">,
  all: readonly { id: string; mapNumber: number }[],
): number[] => all.filter(({ id }) => foils.includes(id)).map(({ mapNumber }) => mapNumber)

/** What the red button was touched for: outside of a service, then at the last one. */
export const alarmsOfPlan = ({ service, alarms = [] }: Plan): Alarm[] => [
  ...alarms.map((alarm) => ({ ...alarm, undone: false })),
  ...(service?.log ?? []).flatMap(({ tap, wallAt, undone }) =>
    tap.kind === "alarm" ? [{ ...tap, wallAt, undone }] : [],
  ),
]
