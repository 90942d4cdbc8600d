import type { Mix } from "../../../core/document/schema"
import { ratiosWanted } from "../../../core/mixing/ratiosWanted"
import { usePlan } from "../../../session/usePlan"
import { useWords } from "../../../session/words"

type Props = { mix: Mix; parts: number; onUse: (parts: number) => void }

/** How thick the foils of a mix want it, inside what its sheet allows. */
export function RatioAdvice({ mix, parts, onUse }: Props) {
  const w = useWords().formula.mixing
  const plan = usePlan((open) => open)
  const ratios = ratiosWanted(mix, plan)
  if (ratios.length === 0) return null
  const others = ratios.filter((ratio) => Math.abs(ratio.parts - parts) > 1e-9)
  return (
    <>
      {ratios.map((ratio) => (
        <p className="aside" key={ratio.consistency}>
          {w.wants(ratio)}
        </p>
      ))}
      {others.length > 0 && (
        <div className="actions">
          {others.map(({ parts }) => (
            <button type="button" className="button" key={parts} onClick={() => onUse(parts)}>
              {w.mixSo(parts)}
            </button>
          ))}
        </div>
      )}
    </>
  )
}
