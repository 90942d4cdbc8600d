import type { Clearance } from "../../../core/cautions/clearance"
import type { FieldName } from "../../../core/cautions/rules/rule"
import { useWords } from "../../../session/words"
import { say } from "../../../words/say"
import { Authority } from "../../clearance/Authority"

/** The stops that an answer makes, in red where it was given: what follows, and who decides. */
export function StopsHere({ told, fields }: { told: Clearance; fields: readonly FieldName[] }) {
  const { why } = useWords().cautions
  const stops = told.stops.filter(({ field }) => fields.includes(field))
  if (stops.length === 0) return null
  return (
    <div className="stops-here" role="alert">
      {stops.map((stop) => (
        <p key={`${stop.rule}${stop.about ?? ""}`}>
          <strong>{say(why, stop.why)}</strong> <Authority finding={stop} />
        </p>
      ))}
    </div>
  )
}
