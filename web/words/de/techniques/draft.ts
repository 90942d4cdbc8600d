import type { SectionKind } from "../../../../geometry/section/section"
import type { DraftStepCode } from "../../../core/placement/draftStep"
import type { PlaceCode } from "../../../core/placement/places"
import type { draft as english } from "../../en/techniques/draft"
import { say } from "../../say"

/** A step to begin from when what was drawn is saved as a technique: a sentence or two. */
export const draft: typeof english = (t, { atPlace }) => {
  const depth = ({ depthMm: { start, end } }: DraftStepCode) =>
    start === end ? t.mm(start, 1) : `${t.mm(start, 1)} bis ${t.mm(end, 1)}`
  const side = ({ taken }: DraftStepCode) => (taken === "front" ? "davor" : "dahinter")
  const takes: Record<SectionKind, (step: DraftStepCode) => string> = {
    slice: (step) => `Einen Slice von ${depth(step)} ${side(step)} nehmen; legen und bestreichen.`,
    weave: (step) => `Aus ${depth(step)} ${side(step)} weben; legen und bestreichen.`,
    backcomb: (step) =>
      `${depth(step)} ${side(step)} nehmen, einen Teil zum Ansatz toupieren und hinter dem Polster bestreichen.`,
    painted: (step) => `Eine Partie von ${depth(step)} ${side(step)} nehmen, flach auflegen und bemalen.`,
    "left-out": (step) => `${depth(step)} ${side(step)} so lassen.`,
  }
  const part = ({ at, lengthMm, behindMm }: DraftStepCode) => {
    const where = say<PlaceCode>(atPlace, at)
    return at.code === "behind-hairline"
      ? `Scheitel ${where} ziehen, ${t.mm(lengthMm)} lang.`
      : `Scheitel ${where} ziehen, ${t.mm(lengthMm)} lang und ${t.mm(behindMm)} hinter der Haarlinie.`
  }
  return (step) => `${part(step)} ${takes[step.kind](step)}`
}
