import type { Section } from "../../../geometry/section/section"
import { mirror } from "../../../geometry/surfacePath"
import { fitParting } from "../../../geometry/technique"
import { stitches } from "../../../presets/foils"
import type { Technique, TechniqueSection } from "../../../presets/techniques"
import type { Edit } from "../edit"
import { headOf } from "../measured"
import { newSection } from "../newSection"
import type { Plan } from "../schema"
import { addSections } from "./addSections"

/** Lays a technique on the plan's head, the right side first and then its twin on the left. */
export const layTechnique =
  (technique: Technique): Edit =>
  (plan) => {
    const sections = techniqueSections(technique, plan)
    return sections.length > 0
      ? addSections(...sections)(plan)
      : { refused: `This head has no room for the technique “${technique.name}”.` }
  }

/** What a technique puts on a plan's head, numbered on from what is there; a parting without room is left out. */
export function techniqueSections({ sections }: Technique, plan: Plan): Section[] {
  const right = sections.flatMap((section) => fitted(section, plan))
  const left = right
    .filter(({ isCentred }) => !isCentred)
    .map((each) => ({ ...each, parting: mirror(each.parting) }))
  const made: Section[] = []
  for (const { parting, ...row } of [...right, ...left])
    made.push(sectionFrom(row, parting, { ...plan, sections: [...plan.sections, ...made] }))
  return made
}

function fitted({ parting, ...row }: TechniqueSection, plan: Plan) {
  const made = fitParting(headOf(plan), parting)
  return "parting" in made ? [{ ...row, parting: made.parting }] : []
}

type Row = Omit<TechniqueSection, "parting">

function sectionFrom({ kind, depthMm, stitch, name }: Row, parting: Section["parting"], plan: Plan): Section {
  const section: Section = {
    ...newSection(kind, parting, plan),
    taken: "front",
    depthMm: { start: depthMm, end: depthMm },
  }
  if (section.kind === "left-out") return { ...section, name: name ?? section.name }
  if (!stitch || !("stitchMm" in section)) return section
  const { stitchMm, gapMm, dipMm } = stitches[stitch]
  const dip = section.kind === "backcomb" ? depthMm : dipMm.value
  return { ...section, stitchMm: stitchMm.value, gapMm: gapMm.value, dipMm: dip }
}
