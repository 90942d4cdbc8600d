import { usualWhorlAt, type WornParting } from "../../../../geometry/parting/wornParting"
import { usualOffCentreMm } from "../../../../presets/client/hairlines"
import { setHead } from "../../../core/edits/plan/setHead"
import { limits } from "../../../core/fields/limits"
import { commit } from "../../../session/commit"
import { usePlan } from "../../../session/usePlan"
import { useWords } from "../../../session/words"
import { Choices } from "../../fields/Choices"
import { NumberField } from "../../fields/NumberField"
import { labelledOptions } from "../../fields/options"
import "./hairline.css"

type Word = "centre" | "left" | "right" | "zigzag" | "none"

/** The parting that the client usually wears, and the whorl of the crown. */
export function WornFields() {
  const { common, placement } = useWords()
  const w = placement.hairline
  const worn = usePlan(({ head }) => head.wornParting)
  const whorl = usePlan(({ head }) => head.whorl)
  return (
    <div className="worn-fields">
      <Choices
        legend={w.usualParting}
        options={labelledOptions<Word>(w.partings)}
        value={worn ? wordOf(worn) : null}
        onChange={(word) => wear(partingOf(word, worn))}
        onClear={() => wear(undefined)}
      />
      {worn?.kind === "side" && (
        <NumberField
          name={w.fromMiddle}
          unit={common.units.mm}
          value={worn.offCentreMm}
          range={limits.offCentreMm}
          onCommit={(offCentreMm) => wear({ ...worn, offCentreMm })}
        />
      )}
      <Choices
        legend={w.whorl}
        options={labelledOptions(w.whorlTurns)}
        value={whorl?.turns ?? null}
        onChange={(turns) =>
          commit(
            { chapter: "placement", code: "set-whorl", turns },
            setHead({ whorl: { at: whorl?.at ?? usualWhorlAt, turns } }),
          )
        }
        onClear={() => commit({ chapter: "placement", code: "clear-whorl" }, setHead({ whorl: undefined }))}
      />
    </div>
  )
}

const wordOf = (worn: WornParting): Word => (worn.kind === "side" ? worn.side : worn.kind)

function partingOf(word: Word, before: WornParting | undefined): WornParting {
  if (word !== "left" && word !== "right") return { kind: word }
  return {
    kind: "side",
    side: word,
    offCentreMm: before?.kind === "side" ? before.offCentreMm : usualOffCentreMm.value,
  }
}

const wear = (wornParting: WornParting | undefined) =>
  commit(
    { chapter: "placement", code: wornParting ? "set-usual-parting" : "clear-usual-parting" },
    setHead({ wornParting }),
  )
