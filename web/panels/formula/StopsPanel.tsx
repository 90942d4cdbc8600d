import { useRef, useState } from "react"
import type { Finding } from "../../core/cautions/cautions"
import { checkPlan } from "../../core/cautions/visitOfPlan"
import { newConsultation, type Pass } from "../../core/document/consultation"
import type { Plan } from "../../core/document/schema"
import { setConsultation } from "../../core/edits/plan/setConsultation"
import { commit } from "../../session/commit"
import { nowHere } from "../../session/nowHere"
import { usePlan } from "../../session/usePlan"
import { TextField } from "../fields/TextField"

/** What holds the mix and what must be said beside it, each with its reason, who decides, and where it is from. */
export function StopsPanel() {
  const plan = usePlan((open) => open)
  const { stops, cautions, notKnown } = checkPlan(plan, nowHere())
  const title = useRef<HTMLHeadingElement>(null)
  /** The button pressed is gone with its stop; keys go on from here. */
  const settle = (label: string, passes: readonly Pass[]) => {
    commit(label, setConsultation({ passes }))
    title.current?.focus()
  }
  const unpassed = cautions.filter(({ pass }) => pass === null)
  return (
    <section aria-labelledby="stops-title">
      <h2 id="stops-title" ref={title} tabIndex={-1}>
        {titleOf(stops.length)}
      </h2>
      {stops.map((finding) => (
        <Stop key={`${finding.rule}${finding.mixes ?? ""}`} finding={finding} plan={plan} settle={settle} />
      ))}
      {cautions
        .filter(({ pass }) => pass !== null)
        .map((finding) => (
          <Passed
            key={`${finding.rule}${finding.mixes ?? ""}`}
            finding={finding}
            plan={plan}
            settle={settle}
          />
        ))}
      {unpassed.length > 0 && (
        <details>
          <summary>{unpassed.length === 1 ? "One caution" : `${unpassed.length} cautions`}</summary>
          <ul className="cautions">
            {unpassed.map((finding) => (
              <li key={`${finding.rule}${finding.mixes ?? ""}`}>
                {finding.why} <Authority finding={finding} />
              </li>
            ))}
          </ul>
        </details>
      )}
      {notKnown.length > 0 && (
        <details>
          <summary>{notKnown.length === 1 ? "One thing" : `${notKnown.length} things`} not known yet</summary>
          <ul className="cautions">
            {notKnown.map((thing) => (
              <li key={thing}>{thing}</li>
            ))}
          </ul>
        </details>
      )}
    </section>
  )
}

const titleOf = (stops: number) =>
  stops === 0 ? "No stop is open" : stops === 1 ? "A stop holds the mix" : `${stops} stops hold the mix`

const Authority = ({ finding: { decides, source } }: { finding: Finding }) => (
  <span className="aside">
    Decides: {decides}. Source: {source}.
  </span>
)

function Stop({ finding, plan, settle }: StopProps) {
  return (
    <div className="conflict">
      <p>
        <strong>{finding.why}</strong>
      </p>
      <p>
        <Authority finding={finding} />
      </p>
      {finding.passable ? (
        <PassForm finding={finding} plan={plan} settle={settle} />
      ) : (
        <p>This stop cannot be passed.</p>
      )}
    </div>
  )
}

type StopProps = {
  finding: Finding
  plan: Plan
  settle: (label: string, passes: readonly Pass[]) => void
}

/** A stop that was passed stays in sight, with its reason and a way back. */
function Passed({ finding: { why, pass }, plan, settle }: StopProps) {
  const { passes } = plan.consultation ?? newConsultation()
  return (
    <div className="conflict">
      <p>{why}</p>
      <p>
        <strong>
          Passed by {pass?.by}: {pass?.reason}
        </strong>
      </p>
      <div className="actions">
        <button
          type="button"
          className="button"
          onClick={() =>
            settle(
              "Hold at a stop again",
              passes.filter((each) => each !== pass),
            )
          }
        >
          Take the pass back
        </button>
      </div>
    </div>
  )
}

/** A stop that may be passed is passed in writing, by someone with a name. */
function PassForm({ finding: { rule, mixes, about }, plan, settle }: StopProps) {
  const [pass, setPass] = useState<Pass>({
    rule,
    reason: "",
    by: "",
    ...(mixes && { mix: mixes[0] }),
    ...(about !== undefined && { about }),
  })
  const [isWanting, setWanting] = useState(false)
  const isWritten = pass.reason.trim() !== "" && pass.by.trim() !== ""
  const others = (plan.consultation ?? newConsultation()).passes.filter(
    (each) => each.rule !== rule || each.mix !== pass.mix,
  )
  return (
    <details>
      <summary>Pass it with a written reason</summary>
      <p className="aside">Reason and name print on the map, which others may read: name no illness.</p>
      <div className="pairs">
        <TextField
          name="Reason"
          value={pass.reason}
          most={200}
          onCommit={(reason) => setPass({ ...pass, reason })}
        />
        <TextField name="By" value={pass.by} most={40} onCommit={(by) => setPass({ ...pass, by })} />
      </div>
      <button
        type="button"
        className="button"
        onClick={() =>
          isWritten ? settle("Pass a stop with a reason", [...others, pass]) : setWanting(true)
        }
      >
        Pass this stop
      </button>
      {isWanting && !isWritten && (
        <p className="fault" role="alert">
          Write the reason and who passes it; then press again.
        </p>
      )}
    </details>
  )
}
