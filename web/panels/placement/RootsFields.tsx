import { type Foil, type RootCoat, rootsAfterMin, rootsOf } from "../../../geometry/section/section"
import { rootsToMm } from "../../../presets/placement/foils"
import { limits } from "../../core/fields/limits"
import { traitsOf } from "../../core/kinds/kindRecords"
import { usePlan } from "../../session/usePlan"
import { useWords } from "../../session/words"
import { Choices } from "../fields/Choices"
import type { GroupProps } from "../fields/fieldGroup"
import { NumberField } from "../fields/NumberField"
import { labelledOptions } from "../fields/options"

const none = "none"
/** Less hair than this between where product begins and where the roots end, mm, is nobody's roots. */
const leastMm = 5

type RootsDone = "set-roots-mix" | "set-roots-end" | "set-roots-order" | "set-roots-after"

/** Another mix on the roots of a foil: which, how far down, which of the two goes on first, and how much later the roots. */
export function RootsFields({ foil, change }: { foil: Foil; change: GroupProps["change"] }) {
  const { common, placement } = useWords()
  const w = placement.editor.rootsMix
  const mixes = usePlan((plan) => plan.mixes)
  const roots = rootsOf(foil)
  if (!traitsOf(foil).takesRoots) return null
  const others = mixes.filter(({ id }) => id !== foil.mix).map(({ id }) => ({ value: id, label: id }))
  const set = (code: RootsDone, to: RootCoat | undefined) =>
    change({ chapter: "placement", code }, { treatment: { roots: to } })
  const usual = { toMm: Math.max(rootsToMm.value, foil.rootDistanceMm + leastMm), first: "ends" as const }
  return (
    <>
      <Choices
        legend={w.legend}
        options={[{ value: none, label: w.none }, ...others]}
        value={roots?.mix ?? none}
        onChange={(mix) => set("set-roots-mix", mix === none ? undefined : { ...usual, ...roots, mix })}
      />
      {others.length === 0 && <p className="aside">{w.onlyOne}</p>}
      {roots && (
        <>
          <NumberField
            name={w.to}
            unit={common.units.mm}
            value={roots.toMm}
            range={limits.rootDistanceMm}
            step={5}
            onCommit={(toMm) => set("set-roots-end", { ...roots, toMm })}
          />
          <Choices
            legend={w.first}
            options={labelledOptions(w.firsts)}
            value={roots.first}
            onChange={(first) =>
              set("set-roots-order", { ...roots, first, ...(first === "roots" && { afterMin: undefined }) })
            }
          />
          {roots.first === "ends" && (
            <>
              <NumberField
                name={w.after}
                unit={common.units.min}
                value={rootsAfterMin(roots)}
                range={limits.rootsAfterMin}
                step={5}
                onCommit={(afterMin) => set("set-roots-after", { ...roots, afterMin: afterMin || undefined })}
              />
              <p className="aside">{w.afterNote}</p>
            </>
          )}
        </>
      )}
    </>
  )
}
