import "./timing.css"
import { useState } from "react"
import type { Plan } from "../../core/document/schema"
import { type TimedPlan, timedPlan } from "../../core/schedule/timedPlan"
import { sessionStore } from "../../session/sessionStore"
import { usePlan } from "../../session/usePlan"
import { AfterFoils } from "./AfterFoils"
import { AlarmLog } from "./AlarmLog"
import { ChairLessons } from "./ChairLessons"
import { ConflictList } from "./ConflictList"
import { HeadAtMinute } from "./chart/HeadAtMinute"
import { TimeChart } from "./chart/TimeChart"
import { minutesText, spanText } from "./minutes"
import { NextTime } from "./NextTime"
import { PlannedAndReal } from "./PlannedAndReal"
import { SetAside } from "./SetAside"
import { StrandTestPanel } from "./StrandTestPanel"
import { TimeTable } from "./TimeTable"
import { TimingFields } from "./TimingFields"

/** The visit on the clock: when each foil goes on, may be ready and comes off, and what cannot be kept. */
export function TimingScreen() {
  const plan = usePlan((open) => open)
  const timed = timedPlan(plan)
  return (
    <main className="page timing">
      <h1>Timing</h1>
      <TimingFields plan={plan} />
      {timed.ok ? <OnTheClock plan={plan} timed={timed} /> : <Untimed problems={timed.problems} />}
    </main>
  )
}

const Untimed = ({ problems }: { problems: readonly string[] }) => (
  <ul className="cautions" aria-label="Why there is no clock">
    {problems.map((problem) => (
      <li key={problem}>{problem}</li>
    ))}
  </ul>
)

type Timed = Extract<TimedPlan, { ok: true }>

function OnTheClock({ plan, timed }: { plan: Plan; timed: Timed }) {
  const { rinseMin, lastOnMin } = timed.schedule
  const [wantedMin, scrub] = useState<number | null>(null)
  const atMin = Math.min(wantedMin ?? Math.ceil(lastOnMin), Math.ceil(rinseMin))
  return (
    <>
      <Summary timed={timed} />
      <p>
        <button
          type="button"
          className="button strong"
          onClick={() => sessionStore.setState({ screen: "chair" })}
        >
          Go to the chair
        </button>
      </p>
      <ConflictList timed={timed} />
      <SetAside plan={plan} />
      <HeadAtMinute plan={plan} schedule={timed.schedule} atMin={atMin} onScrub={scrub} />
      <section aria-labelledby="chart-title">
        <h2 id="chart-title">Minute by minute</h2>
        <TimeChart plan={plan} timed={timed} scrubbedMin={atMin} />
      </section>
      <section aria-labelledby="times-title">
        <h2 id="times-title">Foil by foil</h2>
        <TimeTable plan={plan} timed={timed} />
      </section>
      <AfterFoils schedule={timed.schedule} />
      <StrandTestPanel plan={plan} />
      <PlannedAndReal plan={plan} />
      <ChairLessons plan={plan} />
      <AlarmLog plan={plan} />
      <NextTime plan={plan} />
      <ul className="cautions" aria-label="What is assumed">
        {[
          ...timed.assumed,
          "Look early and often; take off what is ready. Nothing here lengthens a product’s longest time.",
        ].map((sentence) => (
          <li key={sentence}>{sentence}</li>
        ))}
      </ul>
    </>
  )
}

function Summary({ timed: { schedule } }: { timed: Timed }) {
  const { firstOnMin, lastOnMin, rinseMin, chairMin, foils } = schedule
  const figures: [string, string][] = [
    ["First foil on", minutesText(firstOnMin)],
    ["Last foil on", minutesText(lastOnMin)],
    ["First look", minutesText(Math.min(...schedule.looksAtMin))],
    ["Last foil off", minutesText(rinseMin)],
    ["Longest on", `${Math.round(Math.max(...foils.map(({ onMin }) => onMin)))} min`],
    ["In the chair", spanText(chairMin)],
  ]
  return (
    <dl className="summary">
      {figures.map(([term, value]) => (
        <div key={term}>
          <dt>{term}</dt>
          <dd>{value}</dd>
        </div>
      ))}
    </dl>
  )
}
