import type { FoilKind } from "../../../geometry/section/section"
import type { Plan } from "../document/schema"
import type { AlarmTap } from "../document/serviceRecord"
import type { Piece } from "../kinds/kindRecord"
import { pieceOf } from "../kinds/kindRecords"

/** One touch of the red button; taken back where the tap was undone. */
export type Alarm = Omit<AlarmTap, "kind"> & { wallAt: string; undone: boolean }

/** The numbers on the map of the foils that an alarm is about. */
export const foilNumbers = (
  { foils = [] }: Pick<AlarmTap, "foils">,
  all: readonly { id: string; mapNumber: number }[],
): number[] => all.filter(({ id }) => foils.includes(id)).map(({ mapNumber }) => mapNumber)

/** What those are called together. */
export const pieceOfAlarm = (
  { foils = [] }: Pick<AlarmTap, "foils">,
  all: readonly { id: string; kind?: FoilKind | undefined }[],
): Piece => pieceOf(all.filter(({ id }) => foils.includes(id)))

/** What the red button was touched for: outside of a service, then at the last one. */
export const alarmsOfPlan = ({ service, alarms = [] }: Plan): Alarm[] => [
  ...alarms.map((alarm) => ({ ...alarm, undone: false })),
  ...(service?.log ?? []).flatMap(({ tap, wallAt, undone }) =>
    tap.kind === "alarm" ? [{ ...tap, wallAt, undone }] : [],
  ),
]
