import { type Foil, isFoil, type Section } from "../../../geometry/section/section"
import { letters, limits } from "../../core/document/limits"
import type { Plan } from "../../core/document/schema"
import { changeSection, type SectionPatch } from "../../core/edits/sections/changeSections"
import { setMapNumber } from "../../core/edits/sections/renumberSections"
import { commit } from "../../session/commit"
import { Choices } from "../fields/Choices"
import { NumberField } from "../fields/NumberField"
import { TextField } from "../fields/TextField"
import { carrierOptions, lieOptions } from "./sectionChoices"

type Change = (label: string, patch: SectionPatch) => void

/** Every other field of a section, by number: folded away, since the words above are usually enough. */
export function FoilDetails({ section, plan }: { section: Section; plan: Plan }) {
  const change: Change = (label, patch) => commit(label, changeSection(section.id, patch))
  return (
    <details className="inner">
      <summary>All figures and fields</summary>
      <div className="editor">
        {"stitchMm" in section && <StitchFields section={section} change={change} />}
        {section.kind === "backcomb" && <BackcombFields section={section} change={change} />}
        {isFoil(section) && <FoilFields foil={section} plan={plan} change={change} />}
        <TextField
          name="Note"
          value={section.note}
          most={letters.note}
          onCommit={(note) => change("Change the note", { band: { note } })}
        />
      </div>
    </details>
  )
}

function StitchFields({ section, change }: { section: Section<"weave" | "backcomb">; change: Change }) {
  const field = (name: string, key: "stitchMm" | "gapMm" | "dipMm") => (
    <NumberField
      name={name}
      unit="mm"
      value={section[key]}
      range={limits.stitchMm}
      step={0.5}
      onCommit={(mm) => change(`Change ${name.toLowerCase()}`, { stitching: { [key]: mm } })}
    />
  )
  return (
    <div className="pairs">
      {field("Stitch", "stitchMm")}
      {field("Gap", "gapMm")}
      {field("Dip of the tail", "dipMm")}
    </div>
  )
}

function BackcombFields({ section, change }: { section: Section<"backcomb">; change: Change }) {
  return (
    <>
      <Choices
        legend="Backcombed out of"
        options={[
          { value: "slice", label: "A slice" },
          { value: "weave", label: "A weave" },
        ]}
        value={section.base}
        onChange={(base) => change(`Backcomb out of a ${base}`, { backcombing: { base } })}
      />
      <div className="pairs">
        <NumberField
          name="Pushed back"
          unit="%"
          value={Math.round(section.pushedShare * 100)}
          range={{ low: 0, high: limits.pushedShare.high * 100 }}
          step={5}
          onCommit={(percent) =>
            change("Change the pushed share", { backcombing: { pushedShare: percent / 100 } })
          }
        />
        <NumberField
          name="Cushion"
          unit="mm"
          value={section.cushionMm}
          range={limits.cushionMm}
          step={5}
          onCommit={(cushionMm) => change("Change the cushion", { backcombing: { cushionMm } })}
        />
      </div>
    </>
  )
}

function FoilFields({ foil, plan, change }: { foil: Foil; plan: Plan; change: Change }) {
  const treat = (label: string, treatment: Partial<Foil>) => change(label, { treatment })
  const { carrier, strand } = foil
  return (
    <>
      <div className="pairs">
        <NumberField
          name="Number on the map"
          unit=""
          value={foil.mapNumber}
          range={limits.mapNumber}
          onCommit={(mapNumber) => commit("Renumber", setMapNumber(foil.id, mapNumber))}
        />
        <NumberField
          name="From the scalp"
          unit="mm"
          value={foil.rootDistanceMm}
          range={limits.rootDistanceMm}
          onCommit={(rootDistanceMm) => treat("Change the root distance", { rootDistanceMm })}
        />
        <NumberField
          name="Coated from"
          unit="%"
          value={Math.round(strand.from * 100)}
          range={{ low: 0, high: 99 }}
          step={5}
          onCommit={(percent) =>
            treat("Change the coated part", { strand: { ...strand, from: percent / 100 } })
          }
        />
        <NumberField
          name="Coated to"
          unit="%"
          value={Math.round(strand.to * 100)}
          range={{ low: 1, high: 100 }}
          step={5}
          onCommit={(percent) =>
            treat("Change the coated part", { strand: { ...strand, to: percent / 100 } })
          }
        />
      </div>
      <Choices
        legend="Faces coated"
        options={[
          { value: "2", label: "Both" },
          { value: "1", label: "One, painted" },
        ]}
        value={foil.faces === 2 ? "2" : "1"}
        onChange={(faces) => treat("Change the faces coated", { faces: faces === "2" ? 2 : 1 })}
      />
      <Choices
        legend="Carried on"
        options={carrierOptions}
        value={carrier.kind}
        onChange={(kind) => treat("Change the carrier", { carrier: { ...carrier, kind } })}
      />
      <div className="pairs">
        <NumberField
          name="Carrier width"
          unit="mm"
          value={carrier.widthMm}
          range={limits.carrierWidthMm}
          onCommit={(widthMm) => treat("Change the carrier", { carrier: { ...carrier, widthMm } })}
        />
        <NumberField
          name="Carrier length"
          unit="mm"
          value={carrier.lengthMm}
          range={limits.carrierLengthMm}
          onCommit={(lengthMm) => treat("Change the carrier", { carrier: { ...carrier, lengthMm } })}
        />
        <NumberField
          name="Elevation"
          unit="°"
          value={foil.elevationDeg}
          range={limits.elevationDeg}
          step={15}
          onCommit={(elevationDeg) => treat("Change the elevation", { elevationDeg })}
        />
        <NumberField
          name="Over-direction"
          unit="°"
          value={foil.overDirectionDeg}
          range={limits.overDirectionDeg}
          step={15}
          onCommit={(overDirectionDeg) => treat("Change the over-direction", { overDirectionDeg })}
        />
      </div>
      <Choices
        legend="Foil lies"
        options={lieOptions}
        value={foil.foilLie}
        onChange={(foilLie) => treat("Change the foil lie", { foilLie })}
      />
      <Choices
        legend="Mix"
        options={plan.mixes.map(({ id }) => ({ value: id, label: id }))}
        value={foil.mix}
        onChange={(mix) => treat(`Use mix ${mix}`, { mix })}
      />
    </>
  )
}
