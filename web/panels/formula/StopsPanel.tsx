import { useRef, useState } from "react"
import type { Finding } from "../../core/cautions/cautions"
import { checkPlan } from "../../core/cautions/visitOfPlan"
import { newConsultation, type Pass } from "../../core/document/consultation"
import type { Plan } from "../../core/document/schema"
import { setConsultation } from "../../core/edits/plan/setConsultation"
import { commit } from "../../session/commit"
import { nowHere } from "../../session/nowHere"
import { usePlan } from "../../session/usePlan"
import { useWords } from "../../session/words"
import { say } from "../../words/say"
import { TextField } from "../fields/TextField"

/** What holds the mix and what must be said beside it, each with its reason, who decides, and where it is from. */
export function StopsPanel() {
  const { why: found, notKnown: missing, panel } = useWords().cautions
  const plan = usePlan((open) => open)
  const { stops, cautions, notKnown } = checkPlan(plan, nowHere())
  const title = useRef<HTMLHeadingElement>(null)
  /** The button pressed is gone with its stop; keys go on from here. */
  const settle: Settle = (code, passes: readonly Pass[]) => {
    commit({ chapter: "cautions", code }, setConsultation({ passes }))
    title.current?.focus()
  }
  const unpassed = cautions.filter(({ pass }) => pass === null)
  return (
    <section aria-labelledby="stops-title">
      <h2 id="stops-title" ref={title} tabIndex={-1}>
        {panel.title(stops.length, notKnown.length)}
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
          <summary>{panel.cautions(unpassed.length)}</summary>
          <ul className="cautions">
            {unpassed.map((finding) => (
              <li key={`${finding.rule}${finding.mixes ?? ""}`}>
                {say(found, finding.why)} <Authority finding={finding} />
              </li>
            ))}
          </ul>
        </details>
      )}
      {notKnown.length > 0 && (
        <details>
          <summary>{panel.notKnown(notKnown.length)}</summary>
          <ul className="cautions">
            {notKnown.map((thing) => (
              <li key={JSON.stringify(thing)}>{say(missing, thing)}</li>
            ))}
          </ul>
        </details>
      )}
    </section>
  )
}

function Authority({ finding: { decides, source } }: { finding: Finding }) {
  const { authority } = useWords().cautions
  return <span className="aside">{authority(decides, source)}</span>
}

function Stop({ finding, plan, settle }: StopProps) {
  const { why, panel } = useWords().cautions
  return (
    <div className="conflict">
      <p>
        <strong>{say(why, finding.why)}</strong>
      </p>
      <p>
        <Authority finding={finding} />
      </p>
      {finding.passable ? <PassForm finding={finding} plan={plan} settle={settle} /> : <p>{panel.final}</p>}
    </div>
  )
}

type Settle = (code: "override" | "undo-override", passes: readonly Pass[]) => void
type StopProps = { finding: Finding; plan: Plan; settle: Settle }

/** A stop that was passed stays in sight, with its reason and a way back. */
function Passed({ finding: { why, pass }, plan, settle }: StopProps) {
  const { why: found, panel } = useWords().cautions
  const { passes } = plan.consultation ?? newConsultation()
  return (
    <div className="conflict">
      <p>{say(found, why)}</p>
      <p>
        <strong>{panel.overridden(pass?.by ?? "", pass?.reason ?? "")}</strong>
      </p>
      <div className="actions">
        <button
          type="button"
          className="button"
          onClick={() =>
            settle(
              "undo-override",
              passes.filter((each) => each !== pass),
            )
          }
        >
          {panel.undo}
        </button>
      </div>
    </div>
  )
}

/** A stop that may be passed is passed in writing, by someone with a name. */
function PassForm({ finding: { rule, mixes, about }, plan, settle }: StopProps) {
  const { panel } = useWords().cautions
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
      <summary>{panel.override}</summary>
      <p className="aside">{panel.printed}</p>
      <div className="pairs">
        <TextField
          name={panel.reason}
          value={pass.reason}
          most={200}
          onCommit={(reason) => setPass({ ...pass, reason })}
        />
        <TextField name={panel.by} value={pass.by} most={40} onCommit={(by) => setPass({ ...pass, by })} />
      </div>
      <button
        type="button"
        className="button"
        onClick={() => (isWritten ? settle("override", [...others, pass]) : setWanting(true))}
      >
        {panel.overrideThis}
      </button>
      {isWanting && !isWritten && (
        <p className="fault" role="alert">
          {panel.wanting}
        </p>
      )}
    </details>
  )
}
