import type { Mix } from "../../core/document/schema"
import { ratiosWanted } from "../../core/mixing/ratiosWanted"
import { numberText } from "../../core/text/numberText"
import { usePlan } from "../../session/usePlan"

type Props = { mix: Mix; parts: number; onUse: (parts: number) => void }

/** How thick the foils of a mix want it, inside what its sheet allows. */
export function RatioAdvice({ mix, parts, onUse }: Props) {
  const plan = usePlan((open) => open)
  const ratios = ratiosWanted(mix, plan)
  if (ratios.length === 0) return null
  const others = ratios.filter((ratio) => Math.abs(ratio.parts - parts) > 1e-9)
  return (
    <>
      <p className="aside">
        {ratios
          .map(
            ({ words, parts, foils }) =>
              `${foils} ${foils === 1 ? "foil wants" : "foils want"} it ${words}, 1 : ${numberText(parts)}`,
          )
          .join("; ")}
        .
      </p>
      {others.length > 0 && (
        <div className="actions">
          {others.map(({ parts }) => (
            <button type="button" className="button" key={parts} onClick={() => onUse(parts)}>
              Mix 1 : {numberText(parts)}
            </button>
          ))}
        </div>
      )}
    </>
  )
}
