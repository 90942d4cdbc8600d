import { isFoil } from "../../../geometry/section/section"
import { strandTestRows } from "../../../presets/timing/lift"
import { limits } from "../../core/document/limits"
import type { Mix, Plan } from "../../core/document/schema"
import type { StrandTest } from "../../core/document/timingChoices"
import { setTiming } from "../../core/edits/plan/setTiming"
import { goalOfPlan, testedMix } from "../../core/lift/liftOfPlan"
import { mixesUsed } from "../../core/schedule/mixesUsed"
import { commit } from "../../session/commit"
import { Choices } from "../fields/Choices"
import { NumberField } from "../fields/NumberField"
import { LiftCurve } from "./chart/LiftCurve"
import { StrandRows } from "./StrandRows"

const usualStartLevel = 7

/** Minutes and levels seen on one strand: they narrow when the foils of that mix may be ready. */
export function StrandTestPanel({ plan }: { plan: Plan }) {
  const test = plan.timing?.strandTest ?? null
  const mix = test && testedMix(plan, test)
  const write = (strandTest: StrandTest | null) =>
    commit(strandTest ? "Write down a strand test" : "Take the strand test out", setTiming({ strandTest }))
  return (
    <section aria-labelledby="strand-title">
      <h2 id="strand-title">Strand test</h2>
      <Choices
        legend="Tested in"
        options={plan.mixes.map(({ id, developerVolume }) => ({
          value: id,
          label: `Mix ${id}, ${developerVolume} vol`,
        }))}
        value={mix?.id ?? null}
        onChange={(id) => {
          const chosen = plan.mixes.find((each) => each.id === id)
          if (chosen) write(testIn(chosen, plan, test))
        }}
      />
      {test && !mix && (
        <p className="aside">
          A strand was tested in {test.product} with {test.developerVolume} volume. No mix is made so now; it
          still tells of the hair.
        </p>
      )}
      {test && mix && (
        <>
          <div className="with-fields">
            <NumberField
              name="Level of the strand before"
              unit=""
              value={test.startLevel}
              range={limits.level}
              onCommit={(startLevel) => write({ ...test, startLevel })}
            />
            <button type="button" className="button quiet" onClick={() => write(null)}>
              Take the test out
            </button>
          </div>
          <StrandRows test={test} most={strandTestRows} onChange={write} />
        </>
      )}
      {mixesShown(plan, mix).map((each) => (
        <LiftCurve key={each.id} plan={plan} mix={each} test={test} />
      ))}
    </section>
  )
}

/** The mix of the strand first, then the others that a foil is coated with. */
function mixesShown({ mixes, sections }: Plan, tested: Mix | null): Mix[] {
  const used = mixesUsed(mixes, sections.filter(isFoil))
  return tested ? [tested, ...used.filter(({ id }) => id !== tested.id)] : used
}

const testIn = ({ product, developerVolume }: Mix, plan: Plan, test: StrandTest | null): StrandTest => ({
  product,
  developerVolume,
  startLevel: test?.startLevel ?? goalOfPlan(plan)?.fromLevel ?? usualStartLevel,
  rows: test?.rows ?? [],
})
