import { pieceOf } from "../../core/kinds/kindRecords"
import "./cards.css"
import { type RefObject, useEffect, useRef } from "react"
import { useStore } from "zustand"
import { isFoil } from "../../../geometry/section/section"
import type { Edit } from "../../core/document/edit"
import type { Plan } from "../../core/document/schema"
import { setMeasuredRegrowth } from "../../core/edits/plan/setMeasuredRegrowth"
import { limits } from "../../core/fields/limits"
import { coatedTwice, coatMm, lightenedLine } from "../../core/regrowth/coatedTwice"
import { weeksBetween } from "../../core/regrowth/growth"
import { growthSince, lastLightened } from "../../core/regrowth/lightened"
import { proposeRegrowth, regrow, regrowthActions } from "../../core/regrowth/regrow"
import { type OldFoil, oldFoils } from "../../core/regrowth/sectionStates"
import { fieldId, fieldWanted } from "../../session/clearance/fieldWanted"
import { commit } from "../../session/commit"
import { usePlan } from "../../session/usePlan"
import { useWords } from "../../session/words"
import { NumberField } from "../fields/NumberField"
import { StrandPicture } from "./StrandPicture"

/** What has grown since hair was lightened, and what is done this time with each foil of then. */
export function Regrowth() {
  const plan = usePlan((open) => open)
  const last = lastLightened(plan)
  return last && <Grown plan={plan} on={last.on} />
}

type Code = "regrow" | "propose-regrowth" | "measure-regrowth"
const change = (code: Code, edit: Edit) => commit({ chapter: "cards", code }, edit)

function Grown({ plan, on }: { plan: Plan; on: string }) {
  const w = useWords().cards.regrowth
  const shown = useRef<HTMLDetailsElement>(null)
  useOpenedWhenWanted(shown)
  const growth = growthSince(plan, on)
  const foils = oldFoils(plan)
  const count = (state: OldFoil["state"]) => foils.filter((foil) => foil.state === state).length
  const counts = { due: count("due"), soft: count("soft"), "too-early": count("too-early") }
  return (
    <details className="regrowth" id={fieldId("regrowth")} ref={shown}>
      <summary>
        {w.title}: {w.counts(counts)}
      </summary>
      {!plan.regrowth && <p>{w.grown({ growth, weeks: weeksBetween(on, plan.date) })}</p>}
      <NumberField
        name={w.measured}
        unit={w.unit}
        value={plan.regrowth?.measuredMm ?? growth.midMm}
        range={limits.regrowthMm}
        isUnset={!plan.regrowth}
        onClear={() => change("measure-regrowth", setMeasuredRegrowth(null))}
        onCommit={(mm) => change("measure-regrowth", setMeasuredRegrowth(mm))}
      />
      <p className="aside">{w.why}</p>
      <button
        type="button"
        className="button strong"
        onClick={() => change("propose-regrowth", proposeRegrowth)}
      >
        {w.propose}
      </button>
      <Twice plan={plan} />
      <p className="aside">{w.key}</p>
      <ul className="old-foils">
        {foils.map((old) => (
          <Old key={old.lightened.section.id} old={old} plan={plan} />
        ))}
      </ul>
    </details>
  )
}

/** Hair that would be lightened again, in red. */
function Twice({ plan }: { plan: Plan }) {
  const w = useWords().cards.regrowth
  const twice = coatedTwice(plan)
  if (twice.length === 0) return null
  return (
    <div className="stops-here" role="status">
      {twice.map(({ foil, lightened, fromMm, toMm }) => (
        <p key={`${foil.id} ${lightened.on} ${lightened.section.id}`}>
          {w.twice({ foil: foil.mapNumber, piece: pieceOf([foil]), on: lightened.on, fromMm, toMm })}
        </p>
      ))}
    </div>
  )
}

/** Whoever comes from the stop that says so finds the foils open. */
function useOpenedWhenWanted(shown: RefObject<HTMLDetailsElement | null>) {
  const field = useStore(fieldWanted, (wanted) => wanted.field)
  useEffect(() => {
    if (field !== "regrowth" || !shown.current) return
    shown.current.open = true
    shown.current.scrollIntoView({ block: "start" })
    shown.current.querySelector("summary")?.focus({ preventScroll: true })
    fieldWanted.setState({ field: null })
  }, [field, shown])
}

function Old({ old: { lightened, state, beginsMm }, plan }: { old: OldFoil; plan: Plan }) {
  const w = useWords().cards.regrowth
  const { id, mapNumber } = lightened.section
  const foil = plan.sections.filter(isFoil).find((section) => section.id === id)
  const name = w.foil(mapNumber, pieceOf([lightened.section]))
  const coat = foil ? coatMm(foil, plan) : null
  const begins = (foil && lightenedLine(foil, plan)) ?? beginsMm
  return (
    <li>
      <p>
        <b>{name}</b>: {w.states[state]}
      </p>
      <StrandPicture strand={{ coat, begins }} said={w.picture({ coat, begins })} />
      <p className="aside">{w.begins(beginsMm)}</p>
      <div className="actions">
        {regrowthActions.map((action) => (
          <button
            key={action}
            type="button"
            className="button"
            aria-label={`${name}: ${w.actions[action]}`}
            onClick={() => change("regrow", regrow([id], action))}
          >
            {w.actions[action]}
          </button>
        ))}
      </div>
    </li>
  )
}
