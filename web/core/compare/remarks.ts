import type { SectionKind } from "../../../geometry/section/section"
import { type SectionNameCode, sectionNameOf } from "../document/sectionNameCode"
import type { ComparedPair, Comparison } from "./compare"
import type { Toward } from "./differences"

/** By what a learner's section is not as the model's; measures are the learner's less the model's. */
export type DifferenceCode =
  | { code: "other-side" }
  | { code: "from-hairline"; byMm: number }
  | { code: "moved-over"; byMm: number }
  | { code: "slid"; byMm: number; toward: Toward }
  | { code: "turned"; byDeg: number }
  | { code: "longer"; byShare: number }
  | { code: "deeper"; byMm: number }
  | { code: "starts"; byMm: number }
  | { code: "wrong-band"; model: "front" | "behind" }
  | { code: "other-kind"; model: SectionKind; learner: SectionKind }
  /** Counted among the sections that were matched. */
  | { code: "out-of-order"; model: number; learner: number }

/** What is said of the whole. */
export type ComparisonCode =
  | { code: "laid-anew" }
  | { code: "no-room"; sections: number }
  | { code: "mirrored" }
  | { code: "matched"; matched: number; of: number }
  | { code: "missing"; sections: readonly SectionNameCode[] }
  | { code: "extra"; sections: readonly SectionNameCode[] }

/** Where a row keeps to the hairline its two distances say the same, mm. */
const sameMm = 0.75

/** What of a section is beyond what is allowed, a code each; none where all is as the model has it. */
export function differencesBeyond({ met, found, rank }: ComparedPair): DifferenceCode[] {
  const isSaid = met.hairline === false && Math.abs(found.hairlineMm - found.backMm) < sameMm
  const told: (DifferenceCode | false)[] = [
    met.side === false && { code: "other-side" },
    met.kind === false && { code: "other-kind", ...found.kind },
    met.hairline === false && { code: "from-hairline", byMm: found.hairlineMm },
    met.back === false && !isSaid && { code: "moved-over", byMm: found.backMm },
    met.along === false && { code: "slid", byMm: found.alongMm, toward: found.toward },
    met.angle === false && { code: "turned", byDeg: found.angleDeg },
    met.length === false && { code: "longer", byShare: found.lengthShare },
    met.depth === false && { code: "deeper", byMm: found.depthMm },
    met.start === false && { code: "starts", byMm: found.startMm ?? 0 },
    met.taken === false && { code: "wrong-band", model: found.taken.model },
    met.order === false && { code: "out-of-order", ...rank },
  ]
  return told.filter((each) => each !== false)
}

/** What is said of the whole, beside the sections that were matched. */
export function comparisonCodes({ pairs, missing, extra, ...whole }: Comparison): ComparisonCode[] {
  const told: (ComparisonCode | false)[] = [
    whole.isLaidAnew && { code: "laid-anew" },
    whole.noRoom > 0 && { code: "no-room", sections: whole.noRoom },
    whole.isMirrored && { code: "mirrored" },
    { code: "matched", matched: pairs.length, of: whole.model.length },
    missing.length > 0 && {
      code: "missing",
      sections: missing.map(({ model }) => sectionNameOf(model)),
    },
    extra.length > 0 && { code: "extra", sections: extra.map(({ learner }) => sectionNameOf(learner)) },
  ]
  return told.filter((each) => each !== false)
}
