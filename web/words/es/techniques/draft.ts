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
    start === end ? t.mm(start, 1) : `${t.mm(start, 1)} a ${t.mm(end, 1)}`
  const side = ({ taken }: DraftStepCode) => (taken === "front" ? "delante de ella" : "detrás de ella")
  const takes: Record<SectionKind, (step: DraftStepCode) => string> = {
    slice: (step) => `Tome un velo de ${depth(step)} de grosor ${side(step)}; colóquelo y cúbralo.`,
    weave: (step) => `Teja sobre ${depth(step)} ${side(step)}; coloque y cubra.`,
    backcomb: (step) =>
      `Tome ${depth(step)} ${side(step)}, carde una parte hacia la raíz y cubra a partir del colchón.`,
    painted: (step) => `Tome un panel de ${depth(step)} de grosor ${side(step)}, extiéndalo plano y píntelo.`,
    "left-out": (step) => `Deje ${depth(step)} ${side(step)} como está.`,
  }
  return (step: DraftStepCode) => `${part(step)} ${takes[step.kind](step)}`

  function part({ at, lengthMm, behindMm }: DraftStepCode) {
    const where = say<PlaceCode>(atPlace, at)
    return at.code === "behind-hairline"
      ? `Haga la raya ${where}, de ${t.mm(lengthMm)} de largo.`
      : `Haga la raya ${where}, de ${t.mm(lengthMm)} de largo y a ${t.mm(behindMm)} detrás del contorno.`
  }
}
