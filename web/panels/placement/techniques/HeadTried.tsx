import type { HairlineForm } from "../../../../geometry/scalp/hairlineLandmarks"
import { hairlineForms } from "../../../../geometry/scalp/hairlineLandmarks"
import { type TriedHead, triedHeads } from "../../../../presets/client/headSizes"
import type { Plan } from "../../../core/document/schema"
import { useWords } from "../../../session/words"
import { Choices } from "../../fields/Choices"

/** A head to look at a technique on: the plan's, or one of other size or hairline. */
export type Tried = { size: TriedHead | "plan"; form: HairlineForm | "plan" }
export const planHead: Tried = { size: "plan", form: "plan" }

/** The plan as far as a technique looks at it, with the head that is tried. */
export const withHead = (plan: Plan, { size, form }: Tried): Plan =>
  size === "plan" && form === "plan"
    ? plan
    : {
        ...plan,
        head: {
          size: size === "plan" ? plan.head.size : triedHeads[size].size,
          hairline: form === "plan" ? plan.head.hairline : { form },
        },
      }

const sizes = ["plan", ...(Object.keys(triedHeads) as TriedHead[])] as const
const forms = ["plan", ...hairlineForms] as const

export function HeadTried({ tried, onTry }: { tried: Tried; onTry: (tried: Tried) => void }) {
  const { panel: w } = useWords().techniques
  const sizeOptions = sizes.map((value) => ({
    value,
    label: value === "plan" ? w.thisPlans : w.heads[value],
  }))
  const formOptions = forms.map((value) => ({
    value,
    label: value === "plan" ? w.thisPlans : w.hairlines[value],
  }))
  return (
    <details className="head-tried">
      <summary>{w.anotherHead}</summary>
      <Choices
        legend={w.head}
        options={sizeOptions}
        value={tried.size}
        onChange={(size) => onTry({ ...tried, size })}
      />
      <Choices
        legend={w.hairline}
        options={formOptions}
        value={tried.form}
        onChange={(form) => onTry({ ...tried, form })}
      />
    </details>
  )
}
