import "./painted.css"
import { edgeDrawn } from "../../../../geometry/painted/edge"
import { paintedShare } from "../../../../geometry/painted/flatPanel"
import type { BandName, Painting } from "../../../../geometry/painted/painting"
import { isFoil } from "../../../../geometry/section/section"
import { leastStrandShare, limits } from "../../../core/fields/limits"
import { flatPanelOf } from "../../../core/figures/flatPanelOf"
import { usePlan } from "../../../session/usePlan"
import { useWords } from "../../../session/words"
import { Choices } from "../../fields/Choices"
import type { GroupProps } from "../../fields/fieldGroup"
import { NumberField } from "../../fields/NumberField"
import { labelledOptions } from "../../fields/options"
import { FlatPanelDrawing } from "./FlatPanelDrawing"

type PaintedDone =
  | "set-edge"
  | "draw-edge"
  | "set-edge-high"
  | "set-edge-drop"
  | "set-feather"
  | "set-saturation"

/** How a panel is painted: drawn on it as it lies flat, or by words and numbers. */
export function PaintedFields({ section, change }: GroupProps) {
  const { common, placement } = useWords()
  const w = placement.painting
  const plan = usePlan((open) => open)
  const panel = flatPanelOf(section, plan)
  if (!panel || !isFoil(section)) return null
  const { painting } = panel
  const { strand } = section
  const paint = (code: PaintedDone, values: Partial<Painting>, fromShare = strand.from) =>
    change(
      { chapter: "placement", code },
      { painting: values, treatment: { strand: { ...strand, from: fromShare } } },
    )
  const drawEdge = (shares: readonly number[]) => {
    const { fromShare, ...drawn } = edgeDrawn(shares)
    paint("draw-edge", drawn, fromShare)
  }
  const share = (name: string, value: number, high: number, onCommit: (share: number) => void) => (
    <NumberField
      name={name}
      unit={common.units.percent}
      value={Math.round(value * 100)}
      range={{ low: 0, high: Math.round(high * 100) }}
      step={5}
      onCommit={(percent) => onCommit(percent / 100)}
    />
  )
  const lowest = strand.to - leastStrandShare
  return (
    <section aria-label={w.title}>
      <Choices
        legend={w.edge}
        options={labelledOptions(w.edges)}
        value={painting.edge}
        onChange={(edge) => paint("set-edge", { edge })}
      />
      <p className="aside">{w.draw}</p>
      <FlatPanelDrawing
        panel={panel}
        name={`${w.size(panel)}; ${w.share(paintedShare(panel))}`}
        onDrawn={drawEdge}
      />
      <p>
        {w.size(panel)}; {w.share(paintedShare(panel))}
      </p>
      <div className="pairs">
        {share(w.high, strand.from, lowest, (from) => paint("set-edge-high", {}, from))}
        {share(w.low, painting.dropShare, 1, (dropShare) => paint("set-edge-drop", { dropShare }))}
        <NumberField
          name={w.feather}
          unit={common.units.mm}
          value={painting.featherMm}
          range={limits.featherMm}
          step={5}
          onCommit={(featherMm) => paint("set-feather", { featherMm })}
        />
        {(Object.keys(w.bands) as BandName[]).map((band) => (
          <NumberField
            key={band}
            name={`${w.saturation}: ${w.bands[band]}`}
            unit={common.units.percent}
            value={Math.round(painting.saturation[band] * 100)}
            range={{ low: limits.saturation.low * 100, high: 100 }}
            step={5}
            onCommit={(percent) =>
              paint("set-saturation", { saturation: { ...painting.saturation, [band]: percent / 100 } })
            }
          />
        ))}
      </div>
      <p className="aside">{w.assumed}</p>
      {painting.edge === "freehand" && (
        <div className="pairs">
          {painting.drawn.map((low, i) => {
            const shares = painting.drawn.map((each) => strand.from + painting.dropShare * each)
            return (
              // biome-ignore lint/suspicious/noArrayIndexKey: the places across the panel never change their order
              <div key={i}>
                {share(
                  w.at({ place: i + 1, of: shares.length }),
                  strand.from + painting.dropShare * low,
                  lowest,
                  (to) => drawEdge(shares.with(i, to)),
                )}
              </div>
            )
          })}
        </div>
      )}
    </section>
  )
}
