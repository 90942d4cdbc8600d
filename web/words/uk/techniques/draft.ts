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
    start === end ? t.mm(start, 1) : `від ${t.mm(start, 1)} до ${t.mm(end, 1)}`
  const side = ({ taken }: DraftStepCode) => (taken === "front" ? "перед проділом" : "за проділом")
  const takes: Record<SectionKind, (step: DraftStepCode) => string> = {
    slice: (step) => `Взяти слайс завтовшки ${depth(step)} ${side(step)}; накласти й покрити.`,
    weave: (step) => `Штопка з товщини ${depth(step)} ${side(step)}; накласти й покрити.`,
    backcomb: (step) =>
      `Взяти товщину ${depth(step)} ${side(step)}, частину начесати до кореня й покрити за подушкою.`,
    painted: (step) => `Взяти панель завтовшки ${depth(step)} ${side(step)}, покласти рівно й розмалювати.`,
    "left-out": (step) => `Залишити товщину ${depth(step)} ${side(step)}, як є.`,
  }
  return (step: DraftStepCode) => `${part(step)} ${takes[step.kind](step)}`

  function part({ at, lengthMm, behindMm }: DraftStepCode) {
    const where = say<PlaceCode>(atPlace, at)
    return at.code === "behind-hairline"
      ? `Проділ ${where}, завдовжки ${t.mm(lengthMm)}.`
      : `Проділ ${where}, завдовжки ${t.mm(lengthMm)}, за ${t.mm(behindMm)} від лінії росту.`
  }
}
