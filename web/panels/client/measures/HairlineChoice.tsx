import { useId } from "react"
import { type HairlineForm, hairlineForms } from "../../../../geometry/scalp/hairlineLandmarks"
import { fitHairline } from "../../../core/edits/plan/fitHairline"
import { commit } from "../../../session/commit"
import { usePlan } from "../../../session/usePlan"
import { useWords } from "../../../session/words"
import { hairlinePicture } from "./hairlinePicture"

/** How the hair meets the forehead: four words, each with the line it stands for. */
export function HairlineChoice() {
  const { head: said } = useWords().client
  const form = usePlan((plan) => plan.head.hairline.form)
  const name = useId()
  return (
    <section aria-labelledby="hairline-title">
      <h2 id="hairline-title">{said.hairline}</h2>
      <div className="choices hairlines" role="radiogroup" aria-labelledby="hairline-title">
        {hairlineForms.map((each) => (
          <label key={each}>
            <input
              type="radio"
              name={name}
              checked={each === form}
              onChange={() =>
                commit({ chapter: "client", code: "set-hairline", form: each }, fitHairline(each))
              }
            />
            <span>
              <Picture form={each} />
              <b className="hairline-word">{said.hairlines[each]}</b>
            </span>
          </label>
        ))}
      </div>
    </section>
  )
}

function Picture({ form }: { form: HairlineForm }) {
  const { viewBox, face, hair } = hairlinePicture(form)
  return (
    <svg
      viewBox={viewBox}
      width="92"
      height="100"
      aria-hidden="true"
      fill="none"
      stroke="currentColor"
      strokeLinecap="round"
    >
      <path d={face} strokeWidth="2" />
      <path d={hair} strokeWidth="1.6" />
    </svg>
  )
}
