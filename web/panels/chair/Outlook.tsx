import { useRest } from "./useRest"

/** How the rest of the service stands after what has happened. */
export function Outlook() {
  const lastOnMin = useRest((rest) => rest.lastOnMin)
  const rinseMin = useRest((rest) => rest.rinseMin)
  const conflicts = useRest((rest) => rest.conflicts) ?? []
  if (lastOnMin === null) return null
  return (
    <div className="outlook">
      <p>
        As it stands: last foil on at minute {lastOnMin}, all off at minute {rinseMin}.
      </p>
      {conflicts.map(({ rule, why }) => (
        <p className="said refused" key={rule}>
          {why}
        </p>
      ))}
    </div>
  )
}
