import { usualWhorlAt, type WornParting, whorlTurns } from "../../../../geometry/parting/wornParting"
import { usualOffCentreMm } from "../../../../presets/client/hairlines"
import { limits } from "../../../core/document/limits"
import { setHead } from "../../../core/edits/plan/setHead"
import { capital } from "../../../core/text/capital"
import { commit } from "../../../session/commit"
import { usePlan } from "../../../session/usePlan"
import { Choices } from "../../fields/Choices"
import { NumberField } from "../../fields/NumberField"
import "./hairline.css"

type Word = "centre" | "left" | "right" | "zigzag" | "none"

const partings: readonly { value: Word; label: string }[] = [
  { value: "centre", label: "Centre" },
  { value: "left", label: "On the left" },
  { value: "right", label: "On the right" },
  { value: "zigzag", label: "Zigzag" },
  { value: "none", label: "None" },
]
const turns = whorlTurns.map((value) => ({ value, label: capital(value) }))

/** The parting a client wears and the whorl of her crown, as she arrives. */
export function WornFields() {
  const worn = usePlan(({ head }) => head.wornParting)
  const whorl = usePlan(({ head }) => head.whorl)
  return (
    <div className="worn-fields">
      <Choices
        legend="Parting she wears"
        options={partings}
        value={worn ? wordOf(worn) : null}
        onChange={(word) => wear(partingOf(word, worn))}
        onClear={() => wear(undefined)}
      />
      {worn?.kind === "side" && (
        <NumberField
          name="From the middle"
          unit="mm"
          value={worn.offCentreMm}
          range={limits.offCentreMm}
          onCommit={(offCentreMm) => wear({ ...worn, offCentreMm })}
        />
      )}
      <Choices
        legend="Crown whorl, seen from above"
        options={turns}
        value={whorl?.turns ?? null}
        onChange={(turn) =>
          commit(
            turn === "none" ? "Note that there is no crown whorl" : `Note a crown whorl ${turn}`,
            setHead({ whorl: { at: whorl?.at ?? usualWhorlAt, turns: turn } }),
          )
        }
        onClear={() => commit("Take the crown whorl back", setHead({ whorl: undefined }))}
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
    wornParting ? "Note the parting she wears" : "Take the parting she wears back",
    setHead({ wornParting }),
  )
