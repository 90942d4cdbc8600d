import { isFoil, type Section, type SectionKind } from "../../../../geometry/section/section"
import { limits } from "../../../core/document/limits"
import { usualSection } from "../../../core/document/newSection"
import type { StackWish } from "../../../core/edits/lay/stackBehind"
import { figuresOf } from "../../../core/figures/measured"
import { kindWords } from "../../../core/text/words"
import { planStore } from "../../../session/planStore"
import { Choices } from "../../fields/Choices"
import { NumberField } from "../../fields/NumberField"

type Props = { first: Section; wish: StackWish; onChange: (wish: StackWish) => void }

/** How the stack goes on: its gap and depth, what it follows, bricks, and kinds in turn. */
export function StackFields({ first, wish, onChange }: Props) {
  const change = (part: Partial<StackWish>) => onChange({ ...wish, ...part })
  const deepestMm = Math.max(wish.depthMm.start, wish.depthMm.end)
  return (
    <>
      <div className="pairs">
        <NumberField
          name="Gap between"
          unit="mm"
          value={wish.gapMm}
          range={limits.betweenMm}
          onCommit={(gapMm) => change({ gapMm })}
        />
        <NumberField
          name="Depth of each"
          unit="mm"
          value={deepestMm}
          range={limits.depthMm}
          onCommit={(mm) => change({ depthMm: { start: mm, end: mm } })}
        />
      </div>
      <Choices
        legend="They follow"
        options={[
          { value: "hairline", label: "The hairline" },
          { value: "parting", label: "This parting" },
        ]}
        value={wish.follow}
        onChange={(follow) => change({ follow })}
      />
      <Bricks first={first} wish={wish} change={change} />
      <Seconds first={first} wish={wish} change={change} />
    </>
  )
}

type PartProps = { first: Section; wish: StackWish; change: (part: Partial<StackWish>) => void }

/** Half a foil is half of what one foil holds of the parting. */
function Bricks({ first, wish, change }: PartProps) {
  const { partingMm } = figuresOf(first, planStore.getState().present)
  const widthMm = isFoil(first) ? Math.min(partingMm, first.carrier.widthMm) : partingMm
  const halfMm = Math.round(widthMm / 2)
  const options = [
    { value: "line", label: "In line" },
    { value: "half", label: "Half a foil along" },
  ] as const
  return (
    <>
      <Choices
        legend="Each second one"
        options={options}
        value={wish.shiftMm === 0 ? "line" : wish.shiftMm === halfMm ? "half" : null}
        onChange={(way) => change({ shiftMm: way === "half" ? halfMm : 0 })}
      />
      <NumberField
        name="Moved along by"
        unit="mm"
        value={wish.shiftMm}
        range={{ low: -120, high: 120 }}
        onCommit={(shiftMm) => change({ shiftMm })}
      />
    </>
  )
}

function Seconds({ first, wish: { second }, change }: PartProps) {
  const others = (Object.keys(kindWords) as SectionKind[]).filter((kind) => kind !== first.kind)
  const options = [
    { value: "same", label: "All alike" },
    ...others.map((value) => ({ value, label: `${kindWords[value]} between` })),
  ] as const
  return (
    <>
      <Choices<"same" | SectionKind>
        legend="Kinds in turn"
        options={options as readonly { value: "same" | SectionKind; label: string }[]}
        value={second?.kind ?? "same"}
        onChange={(kind) =>
          change({ second: kind === "same" ? null : { kind, depthMm: usualSection.depthMm[kind] } })
        }
      />
      {second && (
        <NumberField
          name={`Depth of each ${kindWords[second.kind].toLowerCase()}`}
          unit="mm"
          value={second.depthMm}
          range={limits.depthMm}
          onCommit={(depthMm) => change({ second: { ...second, depthMm } })}
        />
      )}
    </>
  )
}
