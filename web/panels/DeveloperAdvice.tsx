import type { DeveloperChoice } from "../service/developer"

type Props = { proposed: DeveloperChoice | null; volume: number; onUse: (volume: number) => void }

/** The weakest developer that reaches the goal by the sheet, why, and one step weaker where the hair asks for it. */
export function DeveloperAdvice({ proposed, volume, onUse }: Props) {
  if (!proposed)
    return <p className="aside">There is no sheet for this product: its own directions decide.</p>
  const use = (wanted: number) => (
    <button type="button" className="button" onClick={() => onUse(wanted)}>
      Use {wanted} vol
    </button>
  )
  if (proposed.kind !== "chosen") return <p className="aside">{proposed.why}</p>
  const { weaker } = proposed
  return (
    <>
      <p className="aside">
        Proposed: {proposed.volume} vol. {proposed.why}
      </p>
      {weaker && (
        <p className="aside">
          Or {weaker.volume} vol: {weaker.reasons.join("; ")}
          {weaker.shortByLevels > 0 && `, but ${weaker.shortByLevels} short of the goal`}.
        </p>
      )}
      <div className="actions">
        {proposed.volume !== volume && use(proposed.volume)}
        {weaker && weaker.volume !== volume && use(weaker.volume)}
      </div>
    </>
  )
}
