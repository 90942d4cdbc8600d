import { isFoil, type Section, type SectionKind } from "../../../../geometry/section/section"
import { usualSection } from "../../../core/document/newSection"
import type { StackWish } from "../../../core/edits/lay/stackBehind"
import { limits } from "../../../core/fields/limits"
import { figuresOf } from "../../../core/figures/measured"
import { planStore } from "../../../session/planStore"
import { useWords } from "../../../session/words"
import { Choices } from "../../fields/Choices"
import { NumberField } from "../../fields/NumberField"
import { labelledOptions } from "../../fields/options"

type Props = { first: Section; wish: StackWish; onChange: (wish: StackWish) => void }

/** How the stack goes on: its gap and depth, what it follows, bricks, and kinds in turn. */
export function StackFields({ first, wish, onChange }: Props) {
  const { common, placement } = useWords()
  const w = placement.stack
  const change = (part: Partial<StackWish>) => onChange({ ...wish, ...part })
  const deepestMm = Math.max(wish.depthMm.start, wish.depthMm.end)
  return (
    <>
      <div className="pairs">
        <NumberField
          name={w.gap}
          unit={common.units.mm}
          value={wish.gapMm}
          range={limits.betweenMm}
          onCommit={(gapMm) => change({ gapMm })}
        />
        <NumberField
          name={w.depthOfEach}
          unit={common.units.mm}
          value={deepestMm}
          range={limits.depthMm}
          onCommit={(mm) => change({ depthMm: { start: mm, end: mm } })}
        />
      </div>
      <Choices
        legend={w.follow}
        options={labelledOptions(w.follows)}
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
  const { common, placement } = useWords()
  const w = placement.stack
  const { partingMm } = figuresOf(first, planStore.getState().present)
  const widthMm = isFoil(first) ? Math.min(partingMm, first.carrier.widthMm) : partingMm
  const halfMm = Math.round(widthMm / 2)
  const options = [
    { value: "line", label: w.inLine },
    { value: "half", label: w.brick },
  ] as const
  return (
    <>
      <Choices
        legend={w.eachSecond}
        options={options}
        value={wish.shiftMm === 0 ? "line" : wish.shiftMm === halfMm ? "half" : null}
        onChange={(way) => change({ shiftMm: way === "half" ? halfMm : 0 })}
      />
      <NumberField
        name={w.shift}
        unit={common.units.mm}
        value={wish.shiftMm}
        range={{ low: -120, high: 120 }}
        onCommit={(shiftMm) => change({ shiftMm })}
      />
    </>
  )
}

function Seconds({ first, wish: { second }, change }: PartProps) {
  const { common, placement } = useWords()
  const w = placement.stack
  const others = (Object.keys(common.kinds) as SectionKind[]).filter((kind) => kind !== first.kind)
  const options = [
    { value: "same", label: w.allTheSame },
    ...others.map((value) => ({ value, label: w.alternateKind(value) })),
  ] as const
  return (
    <>
      <Choices<"same" | SectionKind>
        legend={w.alternate}
        options={options as readonly { value: "same" | SectionKind; label: string }[]}
        value={second?.kind ?? "same"}
        onChange={(kind) =>
          change({ second: kind === "same" ? null : { kind, depthMm: usualSection.depthMm[kind] } })
        }
      />
      {second && (
        <NumberField
          name={w.depthOfKind(second.kind)}
          unit={common.units.mm}
          value={second.depthMm}
          range={limits.depthMm}
          onCommit={(depthMm) => change({ second: { ...second, depthMm } })}
        />
      )}
    </>
  )
}
