import { type Foil, isFoil, type Section, type SectionKind } from "../../../geometry/section/section"
import { stitches } from "../../../presets/placement/foils"
import { limits } from "../../core/document/limits"
import type { Plan } from "../../core/document/schema"
import { changeKind } from "../../core/edits/sections/changeKind"
import { changeSection, type SectionPatch } from "../../core/edits/sections/changeSections"
import { figuresOf, headOf } from "../../core/figures/measured"
import { areaText, cmText, gramsNumber, gramsRange, hairsNumber, mmText } from "../../core/text/figureText"
import { directionText, kindWords, whereOf } from "../../core/text/words"
import { commit } from "../../session/commit"
import { usePlan, useSession } from "../../session/usePlan"
import { Choices } from "../fields/Choices"
import { NumberField } from "../fields/NumberField"
import { FoilDetails } from "./FoilDetails"
import { NameAndPair } from "./NameAndPair"
import { PlaceFields } from "./PlaceFields"
import { rootOptions, rootPatch, rootWordOf, stitchOptions, stitchWordOf } from "./sectionChoices"
import { CrossingNote } from "./working/CrossingNote"

/** The selected sections: what they come to, and every way to change them without a pointer. */
export function FoilEditor() {
  const plan = usePlan((open) => open)
  const selectedIds = useSession((session) => session.selectedIds)
  const selected = plan.sections.filter(({ id }) => selectedIds.includes(id))
  if (selected.length === 0) return null
  return (
    <section className="editor" aria-labelledby="editor-title">
      <CrossingNote sections={selected} plan={plan} />
      {selected.length === 1 ? (
        <OneSection section={selected[0]} plan={plan} />
      ) : (
        <h2 id="editor-title">{selected.length} sections selected</h2>
      )}
    </section>
  )
}

function OneSection({ section, plan }: { section: Section; plan: Plan }) {
  const number = isFoil(section) ? `${section.mapNumber} ` : ""
  return (
    <>
      <h2 id="editor-title">
        {number}
        {isFoil(section) && section.name ? `${section.name}: ` : ""}
        {kindWords[section.kind]}, {whereOf(section, headOf(plan))}
      </h2>
      <Figures section={section} plan={plan} />
      <NameAndPair section={section} plan={plan} />
      <Choices
        legend="Taken up as"
        options={kinds}
        value={section.kind}
        onChange={(kind) => changeKindOf(section, kind)}
      />
      <PlaceFields section={section} plan={plan} />
      <Shape section={section} />
      {isFoil(section) && <Coating foil={section} plan={plan} />}
      <FoilDetails section={section} plan={plan} />
    </>
  )
}

const kinds = (Object.keys(kindWords) as SectionKind[]).map((value) => ({ value, label: kindWords[value] }))

const changeKindOf = (section: Section, kind: SectionKind) =>
  commit(`Take up as ${kindWords[kind].toLowerCase()}`, changeKind(section.id, kind))

function Figures({ section, plan }: { section: Section; plan: Plan }) {
  const figures = figuresOf(section, plan)
  const shown: [string, string][] = [
    ["Parting", mmText(figures.partingMm)],
    ["Scalp", areaText(figures.areaCm2)],
  ]
  const coated: [string, string][] = [
    ["Share coated", `${Math.round(figures.shareTaken * 100)} %`],
    ["Hairs", hairsNumber(figures.hairs)],
    ["Strand length", cmText(figures.lengthCm)],
    ["Hair", `${gramsNumber(figures.hairG)} g`],
    ["Hair to coat", areaText(figures.strandAreaCm2)],
    ["Foils", String(figures.foils)],
    ["Product", gramsRange(figures.productG)],
  ]
  return (
    <dl className="figures">
      <div className="wide">
        <dt>Direction</dt>
        <dd>{directionText(section, headOf(plan))}</dd>
      </div>
      {[...shown, ...(isFoil(section) ? coated : [])].map(([term, value]) => (
        <div key={term}>
          <dt>{term}</dt>
          <dd>{value}</dd>
        </div>
      ))}
    </dl>
  )
}

function Shape({ section }: { section: Section }) {
  const { start, end } = section.depthMm
  const change = (label: string, patch: SectionPatch) => commit(label, changeSection(section.id, patch))
  const depth = (depthMm: { start: number; end: number }) => change("Change depth", { band: { depthMm } })
  return (
    <>
      <Choices
        legend="Hair taken"
        options={[
          { value: "front", label: "In front" },
          { value: "behind", label: "Behind the parting" },
        ]}
        value={section.taken}
        onChange={(taken) =>
          change(`Take hair ${taken === "front" ? "in front" : "behind"}`, { band: { taken } })
        }
      />
      <div className="pairs">
        <NumberField
          name="Depth at start"
          unit="mm"
          value={start}
          range={limits.depthMm}
          onCommit={(mm) => depth({ start: mm, end })}
        />
        <NumberField
          name="Depth at end"
          unit="mm"
          value={end}
          range={limits.depthMm}
          onCommit={(mm) => depth({ start, end: mm })}
        />
      </div>
      {"stitchMm" in section && (
        <Choices
          legend="Stitch"
          options={stitchOptions}
          value={stitchWordOf(section)}
          onChange={(word) => {
            const { stitchMm, gapMm } = stitches[word]
            change("Change stitch", { stitching: { stitchMm: stitchMm.value, gapMm: gapMm.value } })
          }}
        />
      )}
    </>
  )
}

function Coating({ foil, plan }: { foil: Foil; plan: Plan }) {
  const { lengthCm } = figuresOf(foil, plan)
  return (
    <Choices
      legend="Product starts"
      options={rootOptions}
      value={rootWordOf(foil)}
      onChange={(word) =>
        commit(
          "Change where product starts",
          changeSection(foil.id, { treatment: rootPatch(word, lengthCm) }),
        )
      }
    />
  )
}
