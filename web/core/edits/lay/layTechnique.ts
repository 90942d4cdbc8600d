import { fitParting, otherSide } from "../../../../geometry/placing/technique"
import type { Section } from "../../../../geometry/section/section"
import type { Technique, TechniqueSection } from "../../../../presets/techniques/technique"
import type { Edit } from "../../document/edit"
import { newSection } from "../../document/newSection"
import type { Plan } from "../../document/schema"
import { headOf } from "../../figures/measured"
import { addSections } from "../sections/addSections"

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
  const right = sections.map((row) => ({ row, twinOf: null }))
  const left = sections
    .filter(({ single }) => !single)
    .map((row) => ({ row: { ...row, parting: otherSide(row.parting) }, twinOf: row }))
  const made: Section[] = []
  const placeOf = new Map<TechniqueSection, number>()
  for (const { row, twinOf } of [...right, ...left]) {
    const fitted = fitParting(headOf(plan), row.parting)
    if (!("parting" in fitted)) continue
    placeOf.set(row, made.length)
    made.push(sectionFrom(row, fitted.parting, { ...plan, sections: [...plan.sections, ...made] }))
    const first = twinOf && placeOf.get(twinOf)
    if (typeof first === "number") pairUp(made, first, made.length - 1)
  }
  for (const [first, second] of pairsAmong(sections)) {
    const [one, other] = [placeOf.get(first), placeOf.get(second)]
    if (one !== undefined && other !== undefined) pairUp(made, one, other)
  }
  return made
}

/** The rows that bear the same pair number, two and two. */
function pairsAmong(rows: readonly TechniqueSection[]): [TechniqueSection, TechniqueSection][] {
  return rows.flatMap((row, i): [TechniqueSection, TechniqueSection][] => {
    const second =
      row.pair === undefined ? undefined : rows.slice(i + 1).find(({ pair }) => pair === row.pair)
    return second ? [[row, second]] : []
  })
}

type Row = Omit<TechniqueSection, "parting" | "single" | "pair">

/** Names two of the sections made as each other's twin. */
function pairUp(made: Section[], first: number, second: number) {
  const [one, other] = [made[first], made[second]]
  made[first] = { ...one, twin: other.id }
  made[second] = { ...other, twin: one.id }
}

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
