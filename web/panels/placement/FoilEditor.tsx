import { isFoil, type Section } from "../../../geometry/section/section"
import type { Plan } from "../../core/document/schema"
import { changeKind } from "../../core/edits/sections/changeKind"
import { changeSection, type SectionPatch } from "../../core/edits/sections/changeSections"
import { limits } from "../../core/fields/limits"
import { figuresOf, headOf } from "../../core/figures/measured"
import { directionIn, placeOf } from "../../core/placement/places"
import { commit } from "../../session/commit"
import { sessionStore } from "../../session/sessionStore"
import { usePlan, useSession } from "../../session/usePlan"
import { type Done, useWords } from "../../session/words"
import { Choices } from "../fields/Choices"
import { NumberField } from "../fields/NumberField"
import { labelledOptions, namedOptions } from "../fields/options"
import { FoilDetails } from "./FoilDetails"
import { NameField, PairAndWidth } from "./NameAndPair"
import { PlaceFields } from "./PlaceFields"
import { SharedFields } from "./SharedFields"
import { CrossingNote } from "./working/CrossingNote"

/** The selected sections: what they come to, and every way to change them without a pointer. */
export function FoilEditor() {
  const w = useWords().placement.editor
  const plan = usePlan((open) => open)
  const selectedIds = useSession((session) => session.selectedIds)
  const selected = plan.sections.filter(({ id }) => selectedIds.includes(id))
  if (selected.length === 0) return null
  return (
    <section className="editor" aria-labelledby="editor-title">
      <button
        type="button"
        className="button sheet-close"
        onClick={() => sessionStore.setState({ selectedIds: [] })}
      >
        {w.close}
      </button>
      <CrossingNote sections={selected} plan={plan} />
      {selected.length === 1 ? (
        <OneSection section={selected[0]} plan={plan} />
      ) : (
        <>
          <h2 id="editor-title">{w.several(selected.length)}</h2>
          <SharedFields sections={selected} plan={plan} />
        </>
      )}
    </section>
  )
}

/** What is changed most stands first, then what it comes to; the rest is folded. */
function OneSection({ section, plan }: { section: Section; plan: Plan }) {
  const { placement } = useWords()
  return (
    <>
      <h2 id="editor-title">
        {placement.editor.title({
          kind: section.kind,
          at: placeOf(section, headOf(plan)),
          number: isFoil(section) ? section.mapNumber : null,
          name: section.name ?? "",
        })}
      </h2>
      <SharedFields sections={[section]} plan={plan} />
      <PairAndWidth section={section} plan={plan} />
      <Figures section={section} plan={plan} />
      <FoilDetails section={section}>
        <NameField section={section} />
        <Kind section={section} />
        <PlaceFields section={section} plan={plan} />
        <Shape section={section} />
      </FoilDetails>
    </>
  )
}

function Kind({ section }: { section: Section }) {
  const { common, placement } = useWords()
  return (
    <Choices
      legend={placement.editor.kind}
      options={namedOptions(common.kinds, common)}
      value={section.kind}
      onChange={(kind) =>
        commit({ chapter: "placement", code: "change-kind", kind }, changeKind(section.id, kind))
      }
    />
  )
}

function Figures({ section, plan }: { section: Section; plan: Plan }) {
  const { common, placement } = useWords()
  const w = placement.editor.figures
  const t = common.figures
  const figures = figuresOf(section, plan)
  const shown: [string, string][] = [
    [w.parting, t.mm(figures.partingMm)],
    [w.scalp, t.area(figures.areaCm2)],
  ]
  const coated: [string, string][] = [
    [w.share, t.percent(figures.shareTaken)],
    [w.hairs, t.hairs(figures.hairs)],
    [w.strandLength, t.cm(figures.lengthCm)],
    [w.hair, t.grams(figures.hairG)],
    [w.hairToCoat, t.area(figures.strandAreaCm2)],
    [w.foils, t.whole(figures.foils)],
    [w.product, t.gramsRange(figures.productG)],
  ]
  return (
    <dl className="figures">
      <div className="wide">
        <dt>{w.direction}</dt>
        <dd>{common.direction(directionIn(section, headOf(plan)))}</dd>
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
  const { common, placement } = useWords()
  const w = placement.editor
  const change = (done: Done, patch: SectionPatch) => commit(done, changeSection(section.id, patch))
  const depth = (depthMm: { start: number; end: number }) =>
    change({ chapter: "placement", code: "set-depth" }, { band: { depthMm } })
  return (
    <>
      <Choices
        legend={w.taken}
        options={labelledOptions(w.takenFrom)}
        value={section.taken}
        onChange={(taken) => change({ chapter: "placement", code: "take-hair", taken }, { band: { taken } })}
      />
      <div className="pairs">
        <NumberField
          name={w.depthAtStart}
          unit={common.units.mm}
          value={start}
          range={limits.depthMm}
          onCommit={(mm) => depth({ start: mm, end })}
        />
        <NumberField
          name={w.depthAtEnd}
          unit={common.units.mm}
          value={end}
          range={limits.depthMm}
          onCommit={(mm) => depth({ start, end: mm })}
        />
      </div>
    </>
  )
}
