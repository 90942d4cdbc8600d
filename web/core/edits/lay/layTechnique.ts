import { fitParting, otherSide, type TechniqueParting } from "../../../../geometry/placing/technique"
import { isFoil, type Section } from "../../../../geometry/section/section"
import { lengthMm } from "../../../../geometry/surface/surfacePath"
import type { Technique, TechniqueSection } from "../../../../presets/techniques/technique"
import { type Edit, isRefusal, refuse } from "../../document/edit"
import { newSection } from "../../document/newSection"
import type { Plan } from "../../document/schema"
import { counts } from "../../fields/limits"
import { headOf } from "../../figures/measured"
import type { LaidFrom, Lesson } from "../../technique/lessonSchema"
import { stillLaid } from "../../technique/stillLaid"
import { addSections } from "../sections/addSections"
import { patched } from "../sections/changeSections"
import { fromWornParting, piecesOnSides } from "./wornSides"

/** Lays a technique on the plan's head, the right side first and then its twin on the left; the plan keeps what it was laid from. */
export const layTechnique =
  (technique: Pick<Technique, "name" | "sections">, from?: LaidFrom): Edit =>
  (plan) => {
    const sections = techniqueSections(technique, plan)
    if (sections.length === 0) return refuse({ code: "no-room-for-technique", name: technique.name })
    const laid = addSections(...sections)(plan)
    return isRefusal(laid) || !from ? laid : { ...laid, lesson: withLaid(from, sections, laid) }
  }

/** The lesson of a plan with one more technique; one of which no section is left is told no more. */
function withLaid(from: LaidFrom, sections: readonly Section[], plan: Plan): Lesson {
  const laid = [...stillLaid(plan), { source: from, sections: sections.map(({ id }) => id) }]
  return { ...plan.lesson, laid: laid.slice(-counts.techniquesLaid.high) }
}

/**
 * What a technique puts on a plan's head, numbered on from what is there; a parting without room is left out. One that is
 * told alike on both sides hangs from the side parting worn, and what would cross that is cut there.
 */
export function techniqueSections({ sections: asDrawn }: Pick<Technique, "sections">, plan: Plan): Section[] {
  const sections = startingAsAsked(asDrawn, plan)
  const told = isEvenSided(sections) ? (parting: TechniqueParting) => fromWornParting(parting, plan) : same
  const right = sections.map((row) => ({ row, twinOf: null }))
  const left = sections
    .filter(({ single }) => !single)
    .map((row) => ({ row: { ...row, parting: otherSide(row.parting) }, twinOf: row }))
  const made: Section[] = []
  const placeOf = new Map<TechniqueSection, number>()
  for (const { row, twinOf } of [...right, ...left]) {
    const fitted = fitParting(headOf(plan), told(row.parting))
    if (!("parting" in fitted)) continue
    for (const piece of piecesOf(fitted.parting, row, plan)) {
      if (!placeOf.has(row)) placeOf.set(row, made.length)
      made.push(sectionFrom(row, piece, { ...plan, sections: [...plan.sections, ...made] }))
    }
    const [first, second] = [twinOf && placeOf.get(twinOf), placeOf.get(row)]
    if (typeof first === "number" && second !== undefined) pairUp(made, first, second)
  }
  for (const [first, second] of pairsAmong(sections)) {
    const [one, other] = [placeOf.get(first), placeOf.get(second)]
    if (one !== undefined && other !== undefined) pairUp(made, one, other)
  }
  return made
}

const same = (parting: TechniqueParting) => parting

/** The nearest start is as near the root as the client was asked for; the others keep their distance behind it. */
function startingAsAsked(
  rows: readonly TechniqueSection[],
  { consultation }: Plan,
): readonly TechniqueSection[] {
  const askedMm = consultation?.rootDistanceMm ?? null
  if (askedMm === null) return rows
  const nearestMm = Math.min(...rows.flatMap(({ treatment }) => treatment?.rootDistanceMm ?? []))
  return rows.map(({ treatment, ...row }) => ({
    ...row,
    ...(treatment && {
      treatment: { ...treatment, rootDistanceMm: treatment.rootDistanceMm - nearestMm + askedMm },
    }),
  }))
}

/** Whether what has no twin lies over the middle, as far to the one side as to the other. */
const isEvenSided = (rows: readonly TechniqueSection[]) =>
  rows.every(
    ({ single, parting }) =>
      !single || (parting.run !== "through" && parting.from.landmark === -parting.to.landmark),
  )

/** A row over the middle is laid on both sides of a parting that it would cross; one of a side stays on its own. */
function piecesOf(parting: Section["parting"], { single }: TechniqueSection, plan: Plan) {
  const pieces = piecesOnSides(parting, plan)
  if (single || pieces.length < 2) return pieces
  const { surface } = headOf(plan)
  return [pieces.reduce((a, b) => (lengthMm(surface, b) > lengthMm(surface, a) ? b : a))]
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
  const { kind, taken, depthMm, name, treatment, ...values } = row
  const section = newSection(kind, parting, plan)
  const made = patched(section, { band: { taken, depthMm }, ...(treatment && { treatment }), ...values })
  return isFoil(made) ? made : { ...made, name: name ?? made.name }
}
