import type { RootCoat } from "../../../geometry/section/section"
import { type FoilRecord, foilRecords, levelLastSeen } from "../chair/chairRecord"
import { chairOfRecord } from "../chair/liveService"
import type { Plan } from "../document/schema"
import type { AlarmTap, RecordedBowl, RecordedToner, ServiceRecord } from "../document/serviceRecord"
import type { Piece } from "../kinds/kindRecord"
import { saidPiece } from "../kinds/saidPiece"
import { type CoatCode, coatCodes } from "../placement/coatCodes"
import { dayIn } from "../text/zonedTime"

/** What went wrong the last time: it is told before anything else. */
export type ReactionCode =
  | { code: "alarm"; alarm: Omit<AlarmTap, "kind">; foils: readonly number[]; piece?: Piece }
  | { code: "burning"; foil: number; piece?: Piece }
  | { code: "limp"; foil: number; piece?: Piece }
  | { code: "stretch-stop"; foil: number; piece?: Piece }

/** A foil as it went: minutes it was on, and the level last seen; null where that is not known. */
export type LastFoil = {
  number: number
  coats: readonly CoatCode[]
  minutesOn: number | null
  level: number | null
}

/** A toner as it went: what it was, and minutes on; null where that is not known. */
export type LastToner = Pick<RecordedToner, "zone" | "product"> & { minutesOn: number | null }

/** The visit before this one, as it was done. */
export type LastVisit = {
  day: string
  reactions: readonly ReactionCode[]
  bowls: readonly RecordedBowl[]
  toners: readonly LastToner[]
  foils: readonly LastFoil[]
}

/** The last of the services that a plan remembers of before; null where it remembers none. */
export function lastVisit({ earlier = [] }: Pick<Plan, "earlier">, zone: string): LastVisit | null {
  const service = earlier.at(-1)
  if (!service) return null
  return {
    day: dayIn(zone, Date.parse(service.startedAt)),
    reactions: reactionsOf(service),
    bowls: (service.bowls ?? []).filter(({ mixedAtMs }) => mixedAtMs !== null),
    toners: (service.toners ?? []).flatMap(tonerOf),
    foils: foilsOf(service),
  }
}

const tonerOf = ({ zone, product, onAtMs, offAtMs }: RecordedToner): LastToner[] =>
  onAtMs === null ? [] : [{ zone, product, minutesOn: offAtMs === null ? null : (offAtMs - onAtMs) / 60_000 }]

function reactionsOf(service: ServiceRecord): ReactionCode[] {
  const numbers = new Map(service.foils.map(({ id, mapNumber }) => [id, mapNumber]))
  const pieceIn = (ids: readonly string[]) => saidPiece(service.foils.filter(({ id }) => ids.includes(id)))
  const told = service.log.flatMap(({ tap, undone }): ReactionCode[] => {
    if (undone) return []
    if (tap.kind === "alarm") {
      const { kind: _, ...alarm } = tap
      // A step of an alarm that was ticked off is no alarm of its own.
      if (alarm.step !== undefined) return []
      const { foils: about = [] } = alarm
      const foils = about.flatMap((id) => numbers.get(id) ?? [])
      return [{ code: "alarm", alarm, foils, ...pieceIn(about) }]
    }
    if (tap.kind !== "looked") return []
    const foil = numbers.get(tap.foil) ?? 0
    const piece = pieceIn([tap.foil])
    return [
      ...(tap.seen.comfort === "burning" ? [{ code: "burning" as const, foil, ...piece }] : []),
      ...(tap.seen.stretch === "stop" ? [{ code: "stretch-stop" as const, foil, ...piece }] : []),
      ...(tap.seen.stretch === "soft" ? [{ code: "limp" as const, foil, ...piece }] : []),
    ]
  })
  return [...new Map(told.map((each) => [JSON.stringify(each), each])).values()]
}

/** What really went on: roots that were to go on later, so long after the ends as they did, or not at all. */
function coatsDone(
  foil: { mix: string; roots?: RootCoat | undefined },
  { rootsLater, onAtMs }: FoilRecord,
): CoatCode[] {
  const coats = coatCodes(foil)
  if (!rootsLater || onAtMs === null) return coats
  const { onAtMs: rootsAtMs } = rootsLater
  if (rootsAtMs === null) return coats.filter(({ part }) => part !== "roots")
  const afterMin = Math.round((rootsAtMs - onAtMs) / 60_000)
  return coats.map((coat) => (coat.part === "roots" ? { ...coat, afterMin } : coat))
}

function foilsOf(service: ServiceRecord): LastFoil[] {
  const records = foilRecords(chairOfRecord(service))
  return service.foils.flatMap(({ id, mapNumber, mix, roots }) => {
    const record = records.get(id)
    if (!record || record.onAtMs === null) return []
    const { onAtMs, offAtMs } = record
    return [
      {
        number: mapNumber,
        coats: mix === undefined ? [] : coatsDone({ mix, roots }, record),
        minutesOn: offAtMs === null ? null : (offAtMs - onAtMs) / 60_000,
        level: levelLastSeen(record),
      },
    ]
  })
}
