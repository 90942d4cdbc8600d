import { isFoil } from "../../../geometry/section/section"
import { strandTestRows } from "../../../presets/timing/lift"
import type { Mix, Plan } from "../../core/document/schema"
import type { StrandTest } from "../../core/document/timingChoices"
import { setTiming } from "../../core/edits/plan/setTiming"
import { limits } from "../../core/fields/limits"
import { goalOfPlan, testedMix } from "../../core/lift/liftOfPlan"
import { mixesUsed } from "../../core/schedule/mixesUsed"
import { commit } from "../../session/commit"
import { useWords } from "../../session/words"
import { Choices } from "../fields/Choices"
import { NumberField } from "../fields/NumberField"
import { LiftCurve } from "./chart/LiftCurve"
import { StrandRows } from "./StrandRows"

const usualStartLevel = 7

/** Minutes and levels seen on one strand: they narrow when the foils of that mix may be ready. */
export function StrandTestPanel({ plan }: { plan: Plan }) {
  const test = plan.timing?.strandTest ?? null
  const mix = test && testedMix(plan, test)
  const w = useWords().timing.strand
  const write = (strandTest: StrandTest | null) =>
    commit(
      { chapter: "timing", code: strandTest ? "set-strand" : "remove-strand" },
      setTiming({ strandTest }),
    )
  return (
    <section aria-labelledby="strand-title">
      <h2 id="strand-title">{w.title}</h2>
      <Choices
        legend={w.testedIn}
        options={plan.mixes.map(({ id, developerVolume }) => ({
          value: id,
          label: w.mix({ mix: id, volume: developerVolume }),
        }))}
        value={mix?.id ?? null}
        onChange={(id) => {
          const chosen = plan.mixes.find((each) => each.id === id)
          if (chosen) write(testIn(chosen, plan, test))
        }}
      />
      {test && !mix && (
        <p className="aside">{w.otherMix({ product: test.product, volume: test.developerVolume })}</p>
      )}
      {test && mix && (
        <>
          <div className="with-fields">
            <NumberField
              name={w.before}
              unit=""
              value={test.startLevel}
              range={limits.level}
              onCommit={(startLevel) => write({ ...test, startLevel })}
            />
            <button type="button" className="button quiet" onClick={() => write(null)}>
              {w.remove}
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
