import type { RestOfService } from "../../service/restOfService"
import { useChair } from "./useChair"

/** How the rest of the service stands after what has happened. */
export function Outlook({ rest }: { rest: RestOfService | null }) {
  const startedAt = useChair(({ live }) => live?.startedAt ?? null)
  if (!rest || startedAt === null) return null
  return (
    <div className="outlook">
      <p>
        As it stands: last foil on at minute {rest.lastOnMin}, all off at minute {rest.rinseMin}.
      </p>
      {rest.conflicts.map(({ rule, why }) => (
        <p className="said refused" key={rule}>
          {why}
        </p>
      ))}
    </div>
  )
}
