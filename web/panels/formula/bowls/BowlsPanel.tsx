import { type MixInPlan, mixesOfPlan } from "../../../core/bowls/mixesOfPlan"
import { holding } from "../../../core/cautions/cautions"
import { useClearance } from "../../../session/clearance/useClearance"
import { usePlan } from "../../../session/usePlan"
import { useWords } from "../../../session/words"
import { say } from "../../../words/say"
import { ToPlacement } from "../../parts/ToPlacement"
import { BowlFigures } from "./BowlFigures"
import { FoilsByBowl } from "./FoilsByBowl"

/** Every bowl of the visit side by side, in the order they are mixed. */
export function BowlsPanel() {
  const { formula, timing } = useWords()
  const w = formula.mixing
  const plan = usePlan((open) => open)
  const { stops } = useClearance()
  const mixes = mixesOfPlan(plan)
  const bowls = mixes
    .flatMap(({ mix, made }) => (made?.bowls ?? []).map((bowl) => ({ mix, bowl })))
    .toSorted((a, b) => a.bowl.atMin - b.bowl.atMin)
  const faults = mixes.flatMap(({ problems, untimed }) => [
    ...problems.map((problem) => say(w.problem, problem)),
    ...untimed.map((problem) => say(timing.problems, problem)),
  ])
  return (
    <section aria-labelledby="bowls-title">
      <h2 id="bowls-title">{w.bowls.title(bowls.length)}</h2>
      {bowls.length === 0 && faults.length === 0 && <NoBowls />}
      {[...new Set(faults)].map((sentence) => (
        <p className="fault" key={sentence}>
          {sentence}
        </p>
      ))}
      <div className="bowls-and-heads">
        <ol className="bowls">
          {bowls.map(({ mix, bowl }) => (
            <BowlFigures
              key={bowl.sections[0]}
              bowl={bowl}
              mix={mix}
              plan={plan}
              isHeld={holding(stops, mix.id).length > 0}
            />
          ))}
        </ol>
        {bowls.length > 0 && <FoilsByBowl plan={plan} />}
      </div>
      {bowls.length > 0 && <BowlsNotes mixes={mixes} />}
    </section>
  )
}

/** What stands here once there are foils, faintly, and the way there. */
function NoBowls() {
  const w = useWords().formula.mixing.bowls
  return (
    <div className="no-bowls">
      <svg viewBox="0 0 220 84" width={220} height={84} aria-hidden="true">
        {[4, 116].map((x) => (
          <path key={x} d={`M${x} 12h100c0 42-22 64-50 64s-50-22-50-64z`} className="faint-bowl" />
        ))}
      </svg>
      <p>{w.none}</p>
      <ToPlacement label={w.toPlacement} />
    </div>
  )
}

/** How much of it goes on the hair and how much is left over, and what is to be known beside it. */
function BowlsNotes({ mixes }: { mixes: readonly MixInPlan[] }) {
  const w = useWords().formula.mixing
  return (
    <ul className="bowl-notes">
      {mixes.flatMap(({ mix, foils, piece, made }) =>
        made
          ? [
              <li key={mix.id}>
                {w.wanted({ foils, piece, mix: mix.id, wantedG: made.wantedG })} {w.mixed(made)}
                {made.cost === null ? "" : ` ${w.cost(made.cost)}`}
                {made.notes.map((note) => ` ${say(w.note, note)}`)}
              </li>,
            ]
          : [],
      )}
    </ul>
  )
}
