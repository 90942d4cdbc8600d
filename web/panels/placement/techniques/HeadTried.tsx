import type { HairlineForm } from "../../../../geometry/scalp/hairlineLandmarks"
import { hairlineForms } from "../../../../geometry/scalp/hairlineLandmarks"
import { type TriedHead, triedHeads } from "../../../../presets/client/headSizes"
import type { Plan } from "../../../core/document/schema"
import { capital } from "../../../core/text/capital"
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

const sizeOptions = [
  { value: "plan" as const, label: "This plan’s" },
  ...(Object.keys(triedHeads) as TriedHead[]).map((value) => ({ value, label: triedHeads[value].name })),
]
const formOptions = [
  { value: "plan" as const, label: "This plan’s" },
  ...hairlineForms.map((value) => ({ value, label: capital(value) })),
]

export function HeadTried({ tried, onTry }: { tried: Tried; onTry: (tried: Tried) => void }) {
  return (
    <details className="head-tried">
      <summary>See it on another head</summary>
      <Choices
        legend="Head"
        options={sizeOptions}
        value={tried.size}
        onChange={(size) => onTry({ ...tried, size })}
      />
      <Choices
        legend="Hairline"
        options={formOptions}
        value={tried.form}
        onChange={(form) => onTry({ ...tried, form })}
      />
    </details>
  )
}
