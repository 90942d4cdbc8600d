import type { HairlinePlace, TechniqueParting } from "../../../geometry/placing/technique"
import type { Technique, TechniqueSection } from "../../../presets/techniques/technique"
import { expected } from "../fields/expected"
import { choice, group, id, line, list, number, wholeNumber } from "../fields/fields"
import { counts, letters, limits } from "../fields/limits"
import { z } from "../fields/zod"
import { sectionKindNames } from "../kinds/kindRecords"
import { kindValues, treatment } from "../kinds/sectionSchema"
import { toldFields } from "../technique/lessonSchema"

/** A technique as it is written to a file or into a link, version 1. Of a client it holds nothing. */

export const techniqueKind = "partline-technique"
export const techniqueVersion = 1

const spot = group({
  landmark: number(limits.landmark),
  behindMm: number(limits.behindMm),
}) satisfies z.ZodMiniType<HairlinePlace>

const between = group({ run: choice(["parallel", "drifting", "straight"]), from: spot, to: spot })
const through = group({ run: z.literal("through"), spots: list(spot, counts.partingPoints, "spots") })
const parting = z.discriminatedUnion("run", [between, through], {
  error: expected({
    code: "kind",
    of: "technique-parting",
    kinds: ["parallel", "drifting", "straight", "through"],
  }),
}) satisfies z.ZodMiniType<TechniqueParting>

const { mapNumber: _, mix: __, name: ___, ...held } = treatment

const section = group({
  kind: choice(sectionKindNames),
  parting,
  taken: choice(["front", "behind"]),
  depthMm: group({ start: number(limits.depthMm), end: number(limits.depthMm) }),
  single: z.optional(z.literal(true, { error: expected({ code: "true-or-left-out" }) })),
  pair: z.optional(wholeNumber(limits.pair)),
  ...kindValues,
  treatment: z.optional(group(held)),
  name: z.optional(line(letters.name)),
}) satisfies z.ZodMiniType<TechniqueSection>

const fields = {
  id,
  ...toldFields,
  sections: list(section, counts.techniqueSections, "sections"),
} satisfies { [Field in keyof Technique]: z.ZodMiniType<Technique[Field]> }

export const techniqueSchema = group({
  kind: z.literal(techniqueKind),
  version: z.literal(techniqueVersion),
  ...fields,
})

/** The published schema, for those who write techniques with other tools. */
export const techniqueJsonSchema = () =>
  z.toJSONSchema(techniqueSchema, {
    // In JSON Schema read-only means "changed by the server alone"; here it only says that lists do not change in place.
    override: ({ jsonSchema }) => {
      delete jsonSchema.readOnly
    },
  })
