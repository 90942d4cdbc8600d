import type { Criterion } from "../../core/compare/differences"
import type { ComparisonCode, DifferenceCode } from "../../core/compare/remarks"
import type { SectionNameCode } from "../../core/document/sectionNameCode"
import { type Sentences, say } from "../say"
import type { Tools } from "../tools"
import type { CommonWords } from "./common/common"

/** A learner's plan held against the model's. */
export const comparing = (t: Tools, common: CommonWords) => {
  const named = (sections: readonly SectionNameCode[]) =>
    t.and(sections.map((each) => say<SectionNameCode>(common.sectionName, each)))
  const mm = (by: number) => t.told.mm(Math.abs(by), 1)
  const toward = t.spelled({
    nape: "along the parting, towards the nape",
    front: "along the parting, towards the centre front",
    left: "along the parting, towards the client’s left",
    right: "along the parting, towards the client’s right",
  })
  return {
    done: {},
    /** What each section is held against, as the head of a column. */
    criteria: {
      side: "Side of the head",
      hairline: "Distance from hairline",
      back: "Place of the parting",
      along: "Place along the parting",
      angle: "Angle",
      length: "Length",
      depth: "Depth",
      start: "Product start",
      taken: "Taken from",
      kind: "Kind",
      order: "Order",
    } satisfies Record<Criterion, string>,
    /** What is beyond what is allowed, within a list. */
    differs: {
      "other-side": "done on the other side of the head",
      "from-hairline": ({ byMm }) => `${mm(byMm)} too ${byMm > 0 ? "far behind" : "close to"} the hairline`,
      "moved-over": ({ byMm }) => `parting ${mm(byMm)} too far ${byMm > 0 ? "back" : "forward"}`,
      slid: ({ byMm, toward: way }) => `moved ${mm(byMm)} ${way ? toward[way] : "along the parting"}`,
      turned: ({ byDeg }) => `angle off by ${t.number(byDeg, 0)}°`,
      longer: ({ byShare }) => `${t.percent(Math.abs(byShare))} too ${byShare > 0 ? "long" : "short"}`,
      deeper: ({ byMm }) => `${mm(byMm)} too ${byMm > 0 ? "deep" : "shallow"}`,
      starts: ({ byMm }) => `product starts ${mm(byMm)} too ${byMm > 0 ? "far from" : "close to"} the scalp`,
      "wrong-band": ({ model }) =>
        `taken from the wrong side of the parting: should be ${model === "front" ? "in front" : "behind"}`,
      "other-kind": ({ model, learner }) => `${common.kinds[learner]} in place of ${common.kinds[model]}`,
      "out-of-order": ({ model, learner }) =>
        `order of work: done at ${t.whole(learner)}, should be ${t.whole(model)}`,
    } satisfies Sentences<DifferenceCode>,
    within: "within tolerance",
    missing: "missing",
    whole: {
      "laid-anew": "The model was laid on this head by its distances from the hairline.",
      "no-room": ({ sections }) =>
        t.count(sections, {
          one: "# section of the model has no room on this head and was not asked for.",
          other: "# sections of the model have no room on this head and were not asked for.",
        }),
      mirrored: "Done as the mirror image: compared with the model’s other side.",
      matched: ({ matched, of }) => `Matched ${t.whole(matched)} of the model’s ${t.whole(of)} sections.`,
      missing: ({ sections }) => `Missing, by the model’s numbers: ${named(sections)}.`,
      extra: ({ sections }) => `Not in the model: ${named(sections)}.`,
    } satisfies Sentences<ComparisonCode>,
    /** The sheet of one learner. */
    sheet: {
      about: "Assessment sheet",
      assumed: "Tolerances are assumptions, for the assessor to set. Mark each step by what you saw.",
      step: "Step",
      unaided: "Unaided",
      withHelp: "With help",
      notYet: "Not yet",
      measured: "Measured on the plan",
      criterion: "Criterion",
      tolerance: "Tolerance",
      met: "Met",
      metOf: (met: number, of: number) => `${t.whole(met)} of ${t.whole(of)}`,
      byCriteria: "By criterion",
      steps: "By step",
      whole: "Whole",
      learner: "Learner",
      assessor: "Assessor",
      date: "Date",
      remarks: "Remarks",
      signature: "Signature",
    },
  }
}

export type ComparingWords = ReturnType<typeof comparing>
