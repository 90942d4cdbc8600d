import type { Conflict } from "../../service/conflicts"
import type { Schedule } from "../../service/timing"
import { useChair } from "./useChair"

type Props = { schedule: Schedule | null; conflicts: readonly Conflict[] }

/** How the rest of the service stands after what has happened. */
export function Outlook({ schedule, conflicts }: Props) {
  const startedAt = useChair(({ live }) => live?.startedAt ?? null)
  if (!schedule || startedAt === null) return null
  return (
    <div className="outlook">
      <p>
        As it stands: last foil on at minute {Math.round(schedule.lastOnMin)}, all off at minute{" "}
        {Math.round(schedule.rinseMin)}.
      </p>
      {conflicts.map(({ rule, why }) => (
        <p className="said refused" key={rule}>
          {why}
        </p>
      ))}
    </div>
  )
}
