import type { SectionKind } from "../../../../geometry/section/section"
import type { DraftStepCode } from "../../../core/placement/draftStep"
import type { PlaceCode } from "../../../core/placement/places"
import { say } from "../../say"
import type { Tools } from "../../tools"
import type { CommonWords } from "../common/common"

/** A step to begin from when what was drawn is saved as a technique: a sentence or two. */
export const draft = (t: Tools, { atPlace }: CommonWords) => {
  const backcomb = t.spelled("backcomb part of it towards the root, and coat past the cushion")
  const depth = ({ depthMm: { start, end } }: DraftStepCode) =>
    start === end ? t.told.mm(start, 1) : `${t.told.mm(start, 1)} to ${t.told.mm(end, 1)}`
  const side = ({ taken }: DraftStepCode) => (taken === "front" ? "in front of it" : "behind it")
  const takes: Record<SectionKind, (step: DraftStepCode) => string> = {
    slice: (step) => `Take a slice ${depth(step)} deep ${side(step)}; place and coat it.`,
    weave: (step) => `Weave out of ${depth(step)} ${side(step)}; place and coat it.`,
    backcomb: (step) => `Take ${depth(step)} ${side(step)}, ${backcomb}.`,
    painted: (step) => `Take a panel ${depth(step)} deep ${side(step)}, lay it flat and paint it.`,
    "left-out": (step) => `Leave ${depth(step)} ${side(step)} as it is.`,
  }
  return (step: DraftStepCode) => `${part(step)} ${takes[step.kind](step)}`

  function part({ at, lengthMm, behindMm }: DraftStepCode) {
    const where = say<PlaceCode>(atPlace, at)
    return at.code === "behind-hairline"
      ? `Part ${where}, ${t.told.mm(lengthMm)} long.`
      : `Part ${where}, ${t.told.mm(lengthMm)} long and ${t.told.mm(behindMm)} behind the hairline.`
  }
}
