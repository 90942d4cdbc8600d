import type { TimingChoices } from "../../../core/document/timingChoices"
import { limits } from "../../../core/fields/limits"
import { useWords } from "../../../session/words"
import { Choices } from "../../fields/Choices"
import { NumberField } from "../../fields/NumberField"
import type { ChangeTiming } from "./changeTiming"

const usualBookingMin = 120

/** How long the chair is booked for, and whether the hair is dried in it. */
export function AppointmentFields({ timing, change }: { timing: TimingChoices; change: ChangeTiming }) {
  const { timing: all, common } = useWords()
  const w = all.settings
  const { bookingMin, isDried = true } = timing
  return (
    <>
      <div className="with-fields">
        <Choices
          legend={w.appointment}
          options={[
            { value: "no" as const, label: w.notSet },
            { value: "yes" as const, label: w.inMinutes },
          ]}
          value={bookingMin === null ? "no" : "yes"}
          onChange={(value) =>
            change("set-booking", { bookingMin: value === "yes" ? usualBookingMin : null })
          }
        />
        {bookingMin !== null && (
          <NumberField
            name={w.booked}
            unit={common.units.min}
            value={bookingMin}
            range={limits.bookingMin}
            step={15}
            onCommit={(min) => change("set-booking", { bookingMin: min })}
          />
        )}
      </div>
      <Choices
        legend={w.drying}
        options={[
          { value: "yes" as const, label: w.dried },
          { value: "no" as const, label: w.damp },
        ]}
        value={isDried ? "yes" : "no"}
        onChange={(value) => change("set-drying", { isDried: value === "yes" })}
      />
    </>
  )
}
