import { stitchWords } from "../../../presets/placement/foils"
import { type TechniqueValues, techniqueWays } from "../../../presets/techniques/technique"
import { choice, group, id, line, lines, list, number } from "../fields/fields"
import { counts, letters, limits } from "../fields/limits"
import { z } from "../fields/zod"

/** What a class reads of a technique, apart from what can be told from the drawing. */
export const toldFields = {
  name: line(letters.name),
  aim: line(letters.aim),
  notes: lines(letters.note),
  steps: list(line(letters.step), counts.steps, "steps"),
}

const values = group({
  depthMm: number(limits.measure),
  gapMm: number(limits.measure),
  count: number(limits.measure),
  stitch: choice(stitchWords),
  way: choice(techniqueWays),
}) satisfies z.ZodMiniType<TechniqueValues>

/** Of the house by its id and how it was varied, so that it is told in the language of whoever reads; else as it was written. */
const source = z.union([group({ house: id, values }), group(toldFields)])

const laid = group({ source, sections: list(id, counts.sections, "sections") })

const texts = (of: "tools" | "steps" | "checks") => z.optional(list(line(letters.step), counts.steps, of))

/** What the educator wrote in the place of what the technique or the drawing says. */
export const ownLessonSchema = group({
  title: z.optional(line(letters.name)),
  aim: z.optional(lines(letters.note)),
  tools: texts("tools"),
  steps: texts("steps"),
  faults: z.optional(
    list(
      group({ fault: line(letters.step), cause: line(letters.step), cure: line(letters.step) }),
      counts.steps,
      "faults",
    ),
  ),
  checks: texts("checks"),
})

/** What a plan teaches: the techniques it was laid from, with the sections that came of each, and the educator's own words. */
export const lessonSchema = group({
  laid: list(laid, counts.techniquesLaid, "techniques"),
  own: z.optional(ownLessonSchema),
})

export type Lesson = Readonly<z.infer<typeof lessonSchema>>
export type OwnLesson = Readonly<z.infer<typeof ownLessonSchema>>
export type LaidFrom = Lesson["laid"][number]["source"]
