import type { Consultation } from "../../../core/document/consultation"
import { recordConsultation } from "../../../core/edits/plan/setConsultation"
import { letters } from "../../../core/fields/limits"
import { commit } from "../../../session/commit"
import { nowHere } from "../../../session/nowHere"
import { useWords } from "../../../session/words"
import { DateField } from "../../fields/DateField"
import { TextField } from "../../fields/TextField"

const parts = ["which", "when", "how"] as const

/** To what, since when, and how it showed: held against the list on every tub. */
export function OtherAllergy({ known: { otherAllergy } }: { known: Consultation }) {
  const { allergy } = useWords().client.ask
  return (
    <div className="pairs" id="field-allergy">
      {parts.map((part) => (
        <TextField
          key={part}
          name={allergy[part]}
          value={otherAllergy[part]}
          most={letters.aim}
          onCommit={(text) =>
            commit(
              { chapter: "client", code: "set-allergy" },
              recordConsultation({ otherAllergy: { ...otherAllergy, [part]: text } }, nowHere()),
            )
          }
        />
      ))}
    </div>
  )
}

/** The day of the latest tattoo: a patch test before it does not count. */
export function HennaDate({ known: { blackHennaOn } }: { known: Consultation }) {
  const { hennaOn } = useWords().client.ask
  return (
    <div id="field-black-henna-date">
      <DateField
        name={hennaOn}
        value={blackHennaOn ?? ""}
        onCommit={(day) =>
          commit(
            { chapter: "client", code: "set-henna-date" },
            recordConsultation({ blackHennaOn: day }, nowHere()),
          )
        }
      />
    </div>
  )
}
