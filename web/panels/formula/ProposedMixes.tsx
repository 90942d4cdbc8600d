import { isMixedSo, type ProposedMix, proposeMixes } from "../../core/bowls/proposeMixes"
import { regroupMixes } from "../../core/edits/plan/regroupMixes"
import { labelPercent } from "../../core/mixing/strength"
import { countText } from "../../core/text/figureText"
import { numberText } from "../../core/text/numberText"
import { commit } from "../../session/commit"
import { usePlan } from "../../session/usePlan"
import { MixSwatch } from "./MixSwatch"

/** How the foils could share mixes, by their hair and how they are worked, where that is not as they are mixed now. */
export function ProposedMixes() {
  const plan = usePlan((open) => open)
  const proposed = proposeMixes(plan)
  if (proposed.length === 0 || isMixedSo(plan, proposed)) return null
  const count = proposed.length === 1 ? "One mix" : `${proposed.length} mixes`
  return (
    <section aria-labelledby="proposed-title">
      <h2 id="proposed-title">{count} proposed by the hair</h2>
      <ul className="proposed">
        {proposed.map((group, index) => (
          <Proposed key={group.mix.id} group={group} index={index} />
        ))}
      </ul>
      <div className="actions">
        <button
          type="button"
          className="button"
          onClick={() => commit("Mix as proposed", regroupMixes(proposed))}
        >
          Mix as proposed
        </button>
      </div>
    </section>
  )
}

function Proposed({ group: { mix, foils, why }, index }: { group: ProposedMix; index: number }) {
  const { developerVolume: volume, ratio } = mix
  return (
    <li>
      <b>{mix.id}</b>
      <MixSwatch index={index} />
      <p>
        {volume} vol ({numberText(labelPercent(volume))} %), 1 :{" "}
        {numberText(ratio.developer / ratio.lightener)}, for {countText(foils.length, "foil")}:{" "}
        {foils.map(({ mapNumber }) => mapNumber).join(", ")}
        <span className="aside">{why.join(" ")}</span>
      </p>
    </li>
  )
}
