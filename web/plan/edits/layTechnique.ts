import type { Section } from "../../../geometry/section/section"
import { fitParting, otherSide } from "../../../geometry/technique"
import type { Technique, TechniqueSection } from "../../../presets/techniques/technique"
import type { Edit } from "../edit"
import { headOf } from "../measured"
import { newSection } from "../newSection"
import type { Plan } from "../schema"
import { addSections } from "./addSections"

/** Lays a technique on the plan's head, the right side first and then its twin on the left. */
export const layTechnique =
  (technique: Pick<Technique, "name" | "sections">): Edit =>
  (plan) => {
    const sections = techniqueSections(technique, plan)
    return sections.length > 0
      ? addSections(...sections)(plan)
      : { refused: `This head has no room for the technique “${technique.name}”.` }
  }

/** What a technique puts on a plan's head, numbered on from what is there; a parting without room is left out. */
export function techniqueSections({ sections }: Pick<Technique, "sections">, plan: Plan): Section[] {
  const twins = sections
    .filter(({ single }) => !single)
    .map((section) => ({ ...section, parting: otherSide(section.parting) }))
  const made: Section[] = []
  for (const { parting, ...row } of [...sections, ...twins]) {
    const fitted = fitParting(headOf(plan), parting)
    if ("parting" in fitted)
      made.push(sectionFrom(row, fitted.parting, { ...plan, sections: [...plan.sections, ...made] }))
  }
  return made
}

type Row = Omit<TechniqueSection, "parting" | "single">

function sectionFrom(row: Row, parting: Section["parting"], plan: Plan): Section {
  const { taken, depthMm, stitching, backcombing, treatment, name } = row
  const band = { taken, depthMm }
  const section = newSection(row.kind, parting, plan)
  switch (section.kind) {
    case "left-out":
      return { ...section, ...band, name: name ?? section.name }
    case "slice":
      return { ...section, ...band, ...treatment }
    case "weave":
      return { ...section, ...band, ...treatment, ...stitching }
    case "backcomb":
      return { ...section, ...band, ...treatment, ...stitching, ...backcombing }
  }
}
