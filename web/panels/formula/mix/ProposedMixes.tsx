import { isMixedSo, type ProposedMix, proposeMixes } from "../../../core/bowls/proposeMixes"
import { regroupMixes } from "../../../core/edits/plan/regroupMixes"
import { labelPercent } from "../../../core/mixing/strength"
import { commit } from "../../../session/commit"
import { usePlan } from "../../../session/usePlan"
import { useWords } from "../../../session/words"
import { say } from "../../../words/say"
import { MixSwatch } from "../swatch/MixSwatch"

/** How the foils could share mixes, by their hair and how they are worked, where that is not as they are mixed now. */
export function ProposedMixes() {
  const w = useWords().formula.mixing.suggestions
  const plan = usePlan((open) => open)
  const proposed = proposeMixes(plan)
  if (proposed.length === 0 || isMixedSo(plan, proposed)) return null
  return (
    <section aria-labelledby="proposed-title">
      <h2 id="proposed-title">{w.title(proposed.length)}</h2>
      <ul className="proposed">
        {proposed.map((group, index) => (
          <Proposed key={group.mix.id} group={group} index={index} />
        ))}
      </ul>
      <div className="actions">
        <button
          type="button"
          className="button"
          onClick={() => commit({ chapter: "formula", code: "use-suggestion" }, regroupMixes(proposed))}
        >
          {w.use}
        </button>
      </div>
    </section>
  )
}

function Proposed({ group: { mix, foils, why }, index }: { group: ProposedMix; index: number }) {
  const w = useWords().formula.mixing.suggestions
  const { developerVolume: volume, ratio } = mix
  const said = w.mix({
    volume,
    percent: labelPercent(volume),
    parts: ratio.developer / ratio.lightener,
    foils: foils.map(({ mapNumber }) => mapNumber),
  })
  return (
    <li>
      <b>{mix.id}</b>
      <MixSwatch index={index} />
      <p>
        {said}
        <span className="aside">{why.map((reason) => say(w.why, reason)).join(" ")}</span>
      </p>
    </li>
  )
}
