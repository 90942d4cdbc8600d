import type { Finding } from "../../core/cautions/cautions"
import { type Clearance, fieldOf } from "../../core/cautions/clearance"
import type { FieldName } from "../../core/cautions/rules/rule"
import { goToField } from "../../session/clearance/fieldWanted"
import { useWords } from "../../session/words"
import { say } from "../../words/say"
import "./clearance.css"

type Props = { told: Clearance; onGo?: () => void }

/** What holds the plan and what was not asked, each row going to the field that answers it. */
export function ClearanceList({ told, onGo }: Props) {
  const { clearance: said, notAsked } = useWords().cautions
  const go = (field: FieldName) => {
    onGo?.()
    goToField(field)
  }
  return (
    <div className="clearance-list">
      <p className={`clearance-head ${told.state}`}>{said.head(told)}</p>
      {told.stops.length > 0 && (
        <ul aria-label={said.stopsTitle}>
          {told.stops.map((stop) => (
            <StopRow key={keyOf(stop)} stop={stop} onGo={() => go(stop.field)} />
          ))}
        </ul>
      )}
      {told.notAsked.length > 0 && (
        <ul aria-label={said.notAskedTitle}>
          {told.notAsked.map((thing) => (
            <li key={JSON.stringify(thing)}>
              <button type="button" className="row" onClick={() => go(fieldOf(thing))}>
                {say(notAsked, thing)}
              </button>
            </li>
          ))}
        </ul>
      )}
    </div>
  )
}

function StopRow({ stop, onGo }: { stop: Finding; onGo: () => void }) {
  const { why } = useWords().cautions
  return (
    <li>
      <button type="button" className="row stop" onClick={onGo}>
        {say(why, stop.why)}
      </button>
    </li>
  )
}

/** A finding by its row and what it is about. */
const keyOf = ({ rule, mixes, about }: Finding) => JSON.stringify([rule, mixes, about])
