import type { SectionKind } from "../../../../geometry/section/section"
import type { DraftStepCode } from "../../../core/placement/draftStep"
import type { PlaceCode } from "../../../core/placement/places"
import { say } from "../../say"
import type { Tools } from "../../tools"
import { common } from "../common/common"

/** A step to begin from when what was drawn is saved as a technique: a sentence or two. */
export const draft = (t: Tools) => {
  const { atPlace } = common(t)
  const depth = ({ depthMm: { start, end } }: DraftStepCode) =>
    start === end ? t.mm(start, 1) : `${t.mm(start, 1)} à ${t.mm(end, 1)}`
  const side = ({ taken }: DraftStepCode) => (taken === "front" ? "devant" : "derrière")
  const takes: Record<SectionKind, (step: DraftStepCode) => string> = {
    slice: (step) => `Prendre une tranche de ${depth(step)} ${side(step)} ; la placer et l’enduire.`,
    weave: (step) => `Tricoter dans ${depth(step)} ${side(step)} ; placer et enduire.`,
    backcomb: (step) =>
      `Prendre ${depth(step)} ${side(step)}, en crêper une partie vers la racine et enduire après le coussin.`,
    painted: (step) => `Prendre une mèche de ${depth(step)} ${side(step)}, la poser à plat et la peindre.`,
    "left-out": (step) => `Laisser tels quels ${depth(step)} ${side(step)}.`,
  }
  return (step: DraftStepCode) => `${part(step)} ${takes[step.kind](step)}`

  function part({ at, lengthMm, behindMm }: DraftStepCode) {
    const where = say<PlaceCode>(atPlace, at)
    return at.code === "behind-hairline"
      ? `Séparer ${where}, sur ${t.mm(lengthMm)} de long.`
      : `Séparer ${where}, sur ${t.mm(lengthMm)} de long, à ${t.mm(behindMm)} derrière la lisière.`
  }
}
