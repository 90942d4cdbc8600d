import type { AlarmTap } from "../../../core/document/serviceRecord"
import type { Piece } from "../../../core/kinds/kindRecord"
import type { ChairWords } from "./chair"

type Words = ChairWords["emergencies"]

/** What the red button was touched for, the step that was done and the foils it was about, as one line. */
export function alarmWords(
  { what, step, words }: Omit<AlarmTap, "kind">,
  foils: readonly number[],
  w: Words,
  piece?: Piece,
): string {
  const name = words ?? w.names[what]
  const steps: Readonly<Record<string, string>> = what === "other" ? {} : w.steps[what]
  const said = step === undefined ? name : w.logStep({ what: name, step: steps[step] ?? step })
  return foils.length === 0 ? said : w.logFoils({ what: said, foils: w.about(foils, piece) })
}
