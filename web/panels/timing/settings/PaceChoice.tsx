import { foilMin, type Skill } from "../../../../presets/timing/pace"
import type { TimingChoices } from "../../../core/document/timingChoices"
import { foilKinds } from "../../../core/kinds/kindRecords"
import { useWords } from "../../../session/words"
import { Choices } from "../../fields/Choices"
import type { ChangeTiming } from "./changeTiming"

const skills = Object.keys(foilMin) as Skill[]

/** Minutes a foil: of a skill, or as it was measured at the chair. */
export function PaceChoice({ timing, change }: { timing: TimingChoices; change: ChangeTiming }) {
  const w = useWords().timing.settings
  const option = (name: Skill | "learnt", { low, high }: { low: number; high: number }) => ({
    value: name,
    label: w.paceOption({ name, low, high }),
  })
  const learnt = foilKinds.flatMap((kind) => timing.pace?.[kind] ?? []).slice(0, 1)
  const options: ReturnType<typeof option>[] = skills.map((skill) => option(skill, foilMin[skill]))
  return (
    <Choices
      legend={w.pace}
      options={[...options, ...learnt.map((range) => option("learnt", range))]}
      value={timing.pace ? "learnt" : timing.skill}
      onChange={(skill) => skill !== "learnt" && change("set-pace", { skill, pace: null })}
    />
  )
}
