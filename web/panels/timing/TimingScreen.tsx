import "./timing.css"
import { useState } from "react"
import { isFoil } from "../../../geometry/section/section"
import type { Plan } from "../../core/document/schema"
import { pieceOf } from "../../core/kinds/kindRecords"
import { type TimedPlan, type TimingProblem, timedPlan } from "../../core/schedule/timedPlan"
import { sessionStore } from "../../session/sessionStore"
import { usePlan } from "../../session/usePlan"
import { useWords } from "../../session/words"
import { say } from "../../words/say"
import { ClearanceHead } from "../clearance/ClearanceHead"
import { ToPlacement } from "../parts/ToPlacement"
import { AfterFoils } from "./AfterFoils"
import { AlarmLog } from "./AlarmLog"
import { ChairLessons } from "./ChairLessons"
import { ConflictList } from "./ConflictList"
import { HeadAtMinute, MinuteSlider } from "./chart/HeadAtMinute"
import { TimeChart } from "./chart/TimeChart"
import { NextTime } from "./NextTime"
import { PlannedAndReal } from "./PlannedAndReal"
import { SetAside } from "./SetAside"
import { StrandTestPanel } from "./StrandTestPanel"
import { Summary } from "./Summary"
import { SettingsLine } from "./settings/SettingsLine"
import { TimeTable } from "./TimeTable"

/** The visit on the clock: when each foil goes on, may be ready and comes off, and what cannot be kept. */
export function TimingScreen() {
  const plan = usePlan((open) => open)
  const timed = timedPlan(plan)
  const { title } = useWords().timing
  return (
    <main className="page timing">
      <h1 className="unseen">{title}</h1>
      <ClearanceHead />
      {timed.ok ? (
        <OnTheClock plan={plan} timed={timed} />
      ) : (
        <Untimed plan={plan} problems={timed.problems} />
      )}
    </main>
  )
}

function Untimed({ plan, problems }: { plan: Plan; problems: readonly TimingProblem[] }) {
  const w = useWords().timing
  const isEmpty = problems.some(({ code }) => code === "no-foils")
  return (
    <>
      {isEmpty && <EmptyChart />}
      <ul className="cautions" aria-label={w.none}>
        {problems.map((problem) => (
          <li key={say(w.problems, problem)}>{say(w.problems, problem)}</li>
        ))}
      </ul>
      {isEmpty && (
        <p>
          <ToPlacement label={w.toPlacement} />
        </p>
      )}
      <SettingsLine plan={plan} />
    </>
  )
}

/** What will stand here, faint. */
const EmptyChart = () => (
  <svg className="empty-chart" viewBox="0 0 400 110" aria-hidden="true">
    {[0, 1, 2, 3].map((row) => (
      <rect key={row} x={20 + 34 * row} y={8 + 26 * row} width={190} height={16} rx={3} />
    ))}
  </svg>
)

type Timed = Extract<TimedPlan, { ok: true }>

function OnTheClock({ plan, timed }: { plan: Plan; timed: Timed }) {
  const { rinseMin, lastOnMin } = timed.schedule
  const [wantedMin, scrub] = useState<number | null>(null)
  const piece = pieceOf(plan.sections.filter(isFoil))
  const atMin = Math.min(wantedMin ?? Math.ceil(lastOnMin), Math.ceil(rinseMin))
  const w = useWords().timing
  return (
    <>
      <div className={timed.conflicts.length > 0 ? "clock-and-clashes" : "clock-alone"}>
        <Summary schedule={timed.schedule} piece={piece} />
        <section className="clock" aria-label={w.chart.title}>
          <TimeChart plan={plan} timed={timed} scrubbedMin={atMin} onScrub={scrub} />
          <MinuteSlider schedule={timed.schedule} atMin={atMin} onScrub={scrub} />
        </section>
        <ConflictList timed={timed} />
        <HeadAtMinute plan={plan} schedule={timed.schedule} atMin={atMin} />
      </div>
      <SettingsLine plan={plan} />
      <SetAside plan={plan} />
      <p>
        <button
          type="button"
          className="button strong"
          onClick={() => sessionStore.setState({ screen: "chair" })}
        >
          {w.toChair}
        </button>
      </p>
      <section aria-labelledby="times-title">
        <h2 id="times-title">{w.table.title(piece)}</h2>
        <TimeTable plan={plan} timed={timed} />
      </section>
      <AfterFoils schedule={timed.schedule} piece={piece} />
      <StrandTestPanel plan={plan} />
      <PlannedAndReal plan={plan} />
      <ChairLessons plan={plan} />
      <AlarmLog plan={plan} />
      <NextTime plan={plan} />
      <ul className="cautions" aria-label={w.assumedTitle}>
        {[...timed.assumed.map((assumption) => say(w.assumed, assumption)), w.alwaysCheck].map((sentence) => (
          <li key={sentence}>{sentence}</li>
        ))}
      </ul>
    </>
  )
}
