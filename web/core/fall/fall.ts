import type { Range } from "../../../geometry/hair/tradeFigures"
import type { Head } from "../../../geometry/scalp/head"
import { zoneAt } from "../../../geometry/scalp/zones"
import type { WornFront } from "../../../geometry/strands/gather"
import { growStrands, type Strands } from "../../../geometry/strands/grow"
import { type Lightened, lightenStrands } from "../../../geometry/strands/lightened"
import { opennessOf } from "../../../geometry/strands/openness"
import { seenShare } from "../../../geometry/strands/seenShare"
import { tradeFigures } from "../../../presets/formula/tradeFigures"
import { headsGrown, strandFigures } from "../../../presets/placement/strands"
import { zoneNames } from "../document/consultation"
import type { Plan } from "../document/schema"
import { headOf } from "../figures/measured"
import { remembered, rememberedByText } from "../memory/remembered"

/** What of a plan decides how its hair falls and where it is light, and how its front is worn: on the cheek, unless said. */
export type FallingPlan = Pick<Plan, "head" | "hair" | "sections"> & { front?: WornFront }

/** The hair of a plan as it falls, and of what is seen round the face the share that is lightened. */
export type Fall = {
  strands: Pick<Strands, "count" | "points" | "lengthsMm">
  light: Lightened
  /** How open each point lies to the light, 0 to 255. */
  open: Uint8Array
  /** The zone each strand grows in, by its place in `zoneNames`. */
  zones: Uint8Array
  share: { left: Range; right: Range }
  /** Heads of hair that the share has been counted on; its range is theirs. */
  heads: number
}

/** Lets the hair of a plan fall: first on one head, unless all have grown, to be seen at once; then on as many as the range asks for. */
export function* fallsOf(plan: FallingPlan): Generator<Fall> {
  if (grownOf(plan).length === 0) yield fallOf(plan, 1)
  yield fallOf(plan)
}

export function fallOf(plan: FallingPlan, heads: number = headsGrown.value): Fall {
  const head = headOf(plan)
  const grown = grownFor(plan, heads)
  const lights = grown.map((strands) => lightenStrands(strands, plan.sections, head))
  const shares = grown.map((strands, i) => seenShare(head, strands, lights[i], strandFigures.roundFaceMm))
  const { count, points, lengthsMm } = grown[0]
  return {
    strands: { count, points, lengthsMm },
    light: lights[0],
    ...beside(head, grown[0]),
    share: {
      left: rangeOf(shares.map(({ left }) => left)),
      right: rangeOf(shares.map(({ right }) => right)),
    },
    heads,
  }
}

/** Where nothing is known of the parting, hair falls from the middle. */
const usualParting = { kind: "centre" } as const

/** What was grown last serves until head, hair, parting or whorl is another: a section changed only lightens anew. */
const grownLast = rememberedByText(1, (_: Pick<FallingPlan, "head" | "hair" | "front">): Strands[] => [])

const grownOf = ({ head, hair, front = "cheek" }: FallingPlan) => grownLast({ head, hair, front })

function grownFor(plan: FallingPlan, heads: number): Strands[] {
  const grown = grownOf(plan)
  const head = headOf(plan)
  const { hair } = plan
  const worn = { parting: plan.head.wornParting ?? usualParting, whorl: plan.head.whorl, front: plan.front }
  while (grown.length < heads)
    grown.push(
      growStrands({
        head,
        hair,
        worn,
        figures: tradeFigures,
        strands: strandFigures,
        seed: grown.length + 1,
      }),
    )
  return grown.slice(0, heads)
}

type Beside = Pick<Fall, "open" | "zones">

/** What only the picture needs of grown hair, worked out once. */
const beside = remembered(
  (head: Head, strands: Strands): Beside => ({ open: opennessOf(strands), zones: zonesOf(head, strands) }),
)

const zonesOf = (head: Head, { roots }: Strands) =>
  Uint8Array.from(roots, (at) =>
    zoneNames.indexOf(
      head.hairline.distanceMm(head.surface.pointAt(at)) <= tradeFigures.hairlineBandMm
        ? "hairline"
        : zoneAt(head, at),
    ),
  )

const rangeOf = (values: readonly number[]): Range => ({
  low: Math.min(...values),
  mid: values.reduce((sum, value) => sum + value, 0) / values.length,
  high: Math.max(...values),
})
