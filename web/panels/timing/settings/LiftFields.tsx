import type { Plan } from "../../../core/document/schema"
import { limits } from "../../../core/fields/limits"
import { goalOfPlan } from "../../../core/lift/liftOfPlan"
import { useWords } from "../../../session/words"
import { Choices } from "../../fields/Choices"
import { NumberField } from "../../fields/NumberField"
import type { ChangeTiming } from "./changeTiming"

const usualLift = { fromLevel: 7, toLevel: 9 }

/** From which level to which, where the clock is not to go by what was asked with the client. */
export function LiftFields({ plan, change }: { plan: Plan; change: ChangeTiming }) {
  const w = useWords().timing.settings
  const lift = plan.timing?.lift ?? null
  const asked = goalOfPlan(plan)
  return (
    <div className="with-fields">
      <Choices
        legend={w.lift}
        options={[
          { value: "no" as const, label: asked && !lift ? w.asAsked : w.notSet },
          { value: "yes" as const, label: w.levels },
        ]}
        value={lift ? "yes" : "no"}
        onChange={(value) => change("set-lift", { lift: value === "yes" ? (asked ?? usualLift) : null })}
      />
      {asked && !lift && <p className="advice">{w.fromTo({ from: asked.fromLevel, to: asked.toLevel })}</p>}
      {lift && (
        <>
          <NumberField
            name={w.levelNow}
            unit=""
            value={lift.fromLevel}
            range={limits.level}
            step={1}
            onCommit={(fromLevel) => change("set-lift", { lift: { ...lift, fromLevel } })}
          />
          <NumberField
            name={w.target}
            unit=""
            value={lift.toLevel}
            range={limits.level}
            step={1}
            onCommit={(toLevel) => change("set-lift", { lift: { ...lift, toLevel } })}
          />
        </>
      )}
    </div>
  )
}
