import { foilMin, type Skill } from "../../../presets/timing/pace"
import { letters, limits } from "../../core/document/limits"
import type { Plan } from "../../core/document/schema"
import type { TimingChoices } from "../../core/document/timingChoices"
import { usualTiming } from "../../core/document/usualTiming"
import { setTiming } from "../../core/edits/plan/setTiming"
import { goalOfPlan } from "../../core/lift/liftOfPlan"
import { heatRefusal } from "../../core/schedule/scheduleProblems"
import { timedPlan } from "../../core/schedule/timedPlan"
import { capital } from "../../core/text/capital"
import { commit } from "../../session/commit"
import { Choices } from "../fields/Choices"
import { NumberField } from "../fields/NumberField"
import { TextField } from "../fields/TextField"
import { BreakFields } from "./BreakFields"
import { HeatChoice } from "./HeatChoice"

type PaceOption = { value: Skill | "learnt"; label: string }

const skills: readonly PaceOption[] = (Object.keys(foilMin) as Skill[]).map((value) => ({
  value,
  label: `${capital(value)} ${foilMin[value].low}–${foilMin[value].high} min a foil`,
}))
const learntOption = ({ slice }: NonNullable<TimingChoices["pace"]>): PaceOption => ({
  value: "learnt",
  label: `Learnt ${oneDecimal(slice.low)}–${oneDecimal(slice.high)} min a foil`,
})
const oneDecimal = (minutes: number) => Math.round(minutes * 10) / 10

const hands = [
  { value: "1", label: "One pair" },
  { value: "2", label: "Two pairs" },
] as const
const rinses = [
  { value: "each", label: "Each when it is ready" },
  { value: "together", label: "All in one rinse" },
] as const
const usualBookingMin = 120
const usualLift = { fromLevel: 7, toLevel: 9 }

/** How fast, how many hands, how the foils come off, and what is wanted of the hair. */
export function TimingFields({ plan }: { plan: Plan }) {
  const timing: TimingChoices = plan.timing ?? usualTiming
  const timed = timedPlan(plan)
  const change = (label: string, part: Partial<TimingChoices>) => commit(label, setTiming(part))
  return (
    <section className="timing-fields" aria-label="How the visit goes">
      <Choices
        legend="Pace"
        options={timing.pace ? [...skills, learntOption(timing.pace)] : skills}
        value={timing.pace ? "learnt" : timing.skill}
        onChange={(skill) => skill !== "learnt" && change("Change the pace", { skill, pace: null })}
      />
      <Choices
        legend="Hands"
        options={hands}
        value={timing.hands === 2 ? "2" : "1"}
        onChange={(value) => change("Change the hands", { hands: value === "2" ? 2 : 1 })}
      />
      <People timing={timing} change={change} />
      <Choices
        legend="Foils come off"
        options={rinses}
        value={timing.rinse}
        onChange={(rinse) => change("Change how foils come off", { rinse })}
      />
      <Goal plan={plan} change={change} />
      <Booking bookingMin={timing.bookingMin} change={change} />
      <HeatChoice timing={timing} refusal={timed.ok ? heatRefusal(timed.service) : null} change={change} />
      <BreakFields timing={timing} change={change} />
    </section>
  )
}

/** Names are asked for only so that each one's pace can be learnt. */
function People({ timing: { people, hands }, change }: { timing: TimingChoices; change: Change }) {
  const [first = "", second = ""] = people ?? []
  const write = (...names: string[]) => change("Change who works", { people: names.slice(0, hands) })
  return (
    <div className="with-fields">
      <TextField
        name={hands === 2 ? "First pair of hands" : "Who works"}
        value={first}
        most={letters.name}
        onCommit={(name) => write(name, second)}
      />
      {hands === 2 && (
        <TextField
          name="Second pair of hands"
          value={second}
          most={letters.name}
          onCommit={(name) => write(first, name)}
        />
      )}
    </div>
  )
}

type Change = (label: string, part: Partial<TimingChoices>) => boolean
const yes = { value: "yes", label: "From level to level" } as const
const booked = [
  { value: "no", label: "Not said" },
  { value: "yes", label: "Minutes in the chair" },
] as const

function Goal({ plan, change }: { plan: Plan; change: Change }) {
  const lift = plan.timing?.lift ?? null
  const asked = goalOfPlan(plan)
  return (
    <div className="with-fields">
      <Choices
        legend="Lift"
        options={[
          { value: "no" as const, label: asked && !lift ? "As asked with the client" : "Not said" },
          yes,
        ]}
        value={lift ? "yes" : "no"}
        onChange={(value) =>
          change("Change the lift wanted", { lift: value === "yes" ? (asked ?? usualLift) : null })
        }
      />
      {asked && !lift && (
        <p className="advice">
          From level {asked.fromLevel} to {asked.toLevel}
        </p>
      )}
      {lift && (
        <>
          <NumberField
            name="Level now"
            unit=""
            value={lift.fromLevel}
            range={limits.level}
            step={1}
            onCommit={(fromLevel) => change("Change the level now", { lift: { ...lift, fromLevel } })}
          />
          <NumberField
            name="Lift to"
            unit=""
            value={lift.toLevel}
            range={limits.level}
            step={1}
            onCommit={(toLevel) => change("Change the level to lift to", { lift: { ...lift, toLevel } })}
          />
        </>
      )}
    </div>
  )
}

function Booking({ bookingMin, change }: { bookingMin: number | null; change: Change }) {
  return (
    <div className="with-fields">
      <Choices
        legend="Booked"
        options={booked}
        value={bookingMin === null ? "no" : "yes"}
        onChange={(value) =>
          change("Change the booking", { bookingMin: value === "yes" ? usualBookingMin : null })
        }
      />
      {bookingMin !== null && (
        <NumberField
          name="Minutes booked"
          unit="min"
          value={bookingMin}
          range={limits.bookingMin}
          step={15}
          onCommit={(min) => change("Change the booking", { bookingMin: min })}
        />
      )}
    </div>
  )
}
