import { type ComponentType, lazy, type ReactNode, Suspense } from "react"
import { type Foil, isFoil, type Section } from "../../../geometry/section/section"
import { changeSection } from "../../core/edits/sections/changeSections"
import { setMapNumber } from "../../core/edits/sections/renumberSections"
import { letters, limits } from "../../core/fields/limits"
import type { FieldGroup } from "../../core/kinds/kindRecord"
import { kindRecords, traitsOf, valuesOf } from "../../core/kinds/kindRecords"
import { commit } from "../../session/commit"
import { useWords } from "../../session/words"
import { Choices } from "../fields/Choices"
import type { GroupProps } from "../fields/fieldGroup"
import { NumberField } from "../fields/NumberField"
import { labelledOptions, namedOptions } from "../fields/options"
import { TextField } from "../fields/TextField"
import { RootsFields } from "./RootsFields"

type Change = GroupProps["change"]
const PaintedFields = lazy(async () => ({
  default: (await import("./painted/PaintedFields")).PaintedFields,
}))

type TreatmentDone =
  | "set-start"
  | "set-coated"
  | "set-faces"
  | "set-carrier"
  | "set-elevation"
  | "set-over-direction"
  | "set-foil-lie"

type Props = { section: Section; children: ReactNode }

/** Every other field of a section: folded away, since the words above are usually enough. */
export function FoilDetails({ section, children }: Props) {
  const w = useWords().placement.editor
  const change: Change = (label, patch) => commit(label, changeSection(section.id, patch))
  return (
    <details className="inner">
      <summary>{w.all}</summary>
      <div className="editor">
        {children}
        {kindRecords[section.kind].fields.map((group) => {
          const Fields = groups[group]
          return (
            <Suspense key={group}>
              <Fields section={section} change={change} />
            </Suspense>
          )
        })}
        {isFoil(section) && <FoilFields foil={section} change={change} />}
        <TextField
          name={w.note}
          value={section.note}
          most={letters.note}
          onCommit={(note) => change({ chapter: "placement", code: "set-note" }, { band: { note } })}
        />
      </div>
    </details>
  )
}

function StitchFields({ section, change }: GroupProps) {
  const { common, placement } = useWords()
  const { stitching } = valuesOf(section)
  if (!stitching) return null
  const field = (key: "stitchMm" | "gapMm" | "dipMm", code: "set-stitch" | "set-gap" | "set-dip") => (
    <NumberField
      name={placement.editor[key]}
      unit={common.units.mm}
      value={stitching[key]}
      range={limits.stitchMm}
      step={0.5}
      onCommit={(mm) => change({ chapter: "placement", code }, { stitching: { [key]: mm } })}
    />
  )
  return (
    <div className="pairs">
      {field("stitchMm", "set-stitch")}
      {field("gapMm", "set-gap")}
      {field("dipMm", "set-dip")}
    </div>
  )
}

function BackcombFields({ section, change }: GroupProps) {
  const { common, placement } = useWords()
  const w = placement.editor
  const { backcombing } = valuesOf(section)
  if (!backcombing) return null
  return (
    <>
      <Choices
        legend={w.backcombedFrom}
        options={labelledOptions(w.bases)}
        value={backcombing.base}
        onChange={(base) =>
          change({ chapter: "placement", code: "set-base", base }, { backcombing: { base } })
        }
      />
      <div className="pairs">
        <NumberField
          name={w.pushedShare}
          unit={common.units.percent}
          value={Math.round(backcombing.pushedShare * 100)}
          range={{ low: 0, high: limits.pushedShare.high * 100 }}
          step={5}
          onCommit={(percent) =>
            change(
              { chapter: "placement", code: "set-pushed-share" },
              { backcombing: { pushedShare: percent / 100 } },
            )
          }
        />
        <NumberField
          name={w.cushion}
          unit={common.units.mm}
          value={backcombing.cushionMm}
          range={limits.cushionMm}
          step={5}
          onCommit={(cushionMm) =>
            change({ chapter: "placement", code: "set-cushion" }, { backcombing: { cushionMm } })
          }
        />
      </div>
    </>
  )
}

/** The fields of what some kinds have beside their band and treatment. */
const groups: Record<FieldGroup, ComponentType<GroupProps>> = {
  stitching: StitchFields,
  backcombing: BackcombFields,
  painting: PaintedFields,
}

function FoilFields({ foil, change }: { foil: Foil; change: Change }) {
  const { common, placement } = useWords()
  const w = placement.editor
  const { units } = common
  const treat = (code: TreatmentDone, treatment: Partial<Foil>) =>
    change({ chapter: "placement", code }, { treatment })
  const { carrier, strand } = foil
  return (
    <>
      <div className="pairs">
        <NumberField
          name={w.mapNumber}
          unit=""
          value={foil.mapNumber}
          range={limits.mapNumber}
          onCommit={(mapNumber) =>
            commit({ chapter: "placement", code: "set-map-number" }, setMapNumber(foil.id, mapNumber))
          }
        />
        <NumberField
          name={w.rootDistance}
          unit={units.mm}
          value={foil.rootDistanceMm}
          range={limits.rootDistanceMm}
          onCommit={(rootDistanceMm) => treat("set-start", { rootDistanceMm })}
        />
        <NumberField
          name={w.coatedFrom}
          unit={units.percent}
          value={Math.round(strand.from * 100)}
          range={{ low: 0, high: 99 }}
          step={5}
          onCommit={(percent) => treat("set-coated", { strand: { ...strand, from: percent / 100 } })}
        />
        <NumberField
          name={w.coatedTo}
          unit={units.percent}
          value={Math.round(strand.to * 100)}
          range={{ low: 1, high: 100 }}
          step={5}
          onCommit={(percent) => treat("set-coated", { strand: { ...strand, to: percent / 100 } })}
        />
      </div>
      <RootsFields foil={foil} change={change} />
      <Choices
        legend={w.coat}
        options={labelledOptions(w.faces)}
        value={foil.faces === 2 ? "both" : "one"}
        onChange={(faces) => treat("set-faces", { faces: faces === "both" ? 2 : 1 })}
      />
      <Choices
        legend={w.carrier}
        options={namedOptions(common.carriers, common).filter(({ value }) =>
          traitsOf(foil).carriers.includes(value),
        )}
        value={carrier.kind}
        onChange={(kind) => treat("set-carrier", { carrier: { ...carrier, kind } })}
      />
      <div className="pairs">
        <NumberField
          name={w.carrierWidth}
          unit={units.mm}
          value={carrier.widthMm}
          range={limits.carrierWidthMm}
          onCommit={(widthMm) => treat("set-carrier", { carrier: { ...carrier, widthMm } })}
        />
        <NumberField
          name={w.carrierLength}
          unit={units.mm}
          value={carrier.lengthMm}
          range={limits.carrierLengthMm}
          onCommit={(lengthMm) => treat("set-carrier", { carrier: { ...carrier, lengthMm } })}
        />
        <NumberField
          name={w.elevation}
          unit={units.degrees}
          value={foil.elevationDeg}
          range={limits.elevationDeg}
          step={15}
          onCommit={(elevationDeg) => treat("set-elevation", { elevationDeg })}
        />
        <NumberField
          name={w.overDirection}
          unit={units.degrees}
          value={foil.overDirectionDeg}
          range={limits.overDirectionDeg}
          step={15}
          onCommit={(overDirectionDeg) => treat("set-over-direction", { overDirectionDeg })}
        />
      </div>
      <Choices
        legend={w.foilLie}
        options={namedOptions(common.foilLies, common)}
        value={foil.foilLie}
        onChange={(foilLie) => treat("set-foil-lie", { foilLie })}
      />
    </>
  )
}
