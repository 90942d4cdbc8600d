import { useRef } from "react"
import type { Finding } from "../../core/cautions/cautions"
import { fieldOf } from "../../core/cautions/clearance"
import type { Consultation } from "../../core/document/consultation"
import { setConsultation } from "../../core/edits/plan/setConsultation"
import { goToField } from "../../session/clearance/fieldWanted"
import { useClearance } from "../../session/clearance/useClearance"
import { commit } from "../../session/commit"
import { useWords } from "../../session/words"
import { say } from "../../words/say"
import "./clearance.css"
import { Authority } from "./Authority"
import { SettledStop, StopCard } from "./StopCard"
import type { Settle } from "./settle"

/** Whether the plan may be mixed, what holds it and what must be said beside it: each with who decides and its source. */
export function StopsPanel() {
  const { clearance: said } = useWords().cautions
  const told = useClearance()
  const title = useRef<HTMLHeadingElement>(null)
  /** The button pressed is gone with its stop; keys go on from here. */
  const settle: Settle = (code, change: Partial<Consultation>) => {
    commit({ chapter: "cautions", code }, setConsultation(change))
    title.current?.focus()
  }
  const isSettled = ({ pass, answered }: Finding) => pass !== null || answered !== null
  return (
    <section aria-labelledby="stops-title">
      <h2 id="stops-title" ref={title} tabIndex={-1} className={`clearance-head ${told.state}`}>
        {said.head(told)}
      </h2>
      {told.stops.map((finding) => (
        <StopCard key={keyOf(finding)} finding={finding} settle={settle} />
      ))}
      {told.cautions.filter(isSettled).map((finding) => (
        <SettledStop key={keyOf(finding)} finding={finding} settle={settle} />
      ))}
      <NotAskedHere things={told.notAsked} />
      <Cautions findings={told.cautions.filter((finding) => !isSettled(finding))} />
      <NotKnownHere things={told.notKnown} />
    </section>
  )
}

/** A finding by its row and what it is about. */
const keyOf = ({ rule, mixes, about }: Finding) => JSON.stringify([rule, mixes, about])

type Told = ReturnType<typeof useClearance>

function NotAskedHere({ things }: { things: Told["notAsked"] }) {
  const { notAsked, panel } = useWords().cautions
  if (things.length === 0) return null
  return (
    <details className="clearance-list">
      <summary>{panel.showNotAsked}</summary>
      <ul>
        {things.map((thing) => (
          <li key={JSON.stringify(thing)}>
            <button type="button" className="row" onClick={() => goToField(fieldOf(thing))}>
              {say(notAsked, thing)}
            </button>
          </li>
        ))}
      </ul>
    </details>
  )
}

function Cautions({ findings }: { findings: readonly Finding[] }) {
  const { why, panel } = useWords().cautions
  if (findings.length === 0) return null
  return (
    <details>
      <summary>{panel.cautions(findings.length)}</summary>
      <ul className="cautions">
        {findings.map((finding) => (
          <li key={keyOf(finding)}>
            {say(why, finding.why)} <Authority finding={finding} />
          </li>
        ))}
      </ul>
    </details>
  )
}

function NotKnownHere({ things }: { things: Told["notKnown"] }) {
  const { notKnown, panel } = useWords().cautions
  if (things.length === 0) return null
  return (
    <details>
      <summary>{panel.notKnown(things.length)}</summary>
      <ul className="cautions">
        {things.map((thing) => (
          <li key={thing.code}>{say(notKnown, thing)}</li>
        ))}
      </ul>
    </details>
  )
}
