import { allergyKinds, type StandingAllergy } from "../../core/document/consultation"
import { counts, letters } from "../../core/fields/limits"
import { useWords } from "../../session/words"
import { Choices } from "../fields/Choices"
import { TextField } from "../fields/TextField"
import type { CardEdit } from "./cardPageProps"

type Props = { allergies: readonly StandingAllergy[]; onChange: (edit: CardEdit) => void }

/** Nothing is known of a new one yet, which is held like the worst. */
const unknown: StandingAllergy = { kind: "not-known", to: "", since: "" }

/** What the client is allergic to, whichever the day. */
export function StandingAllergies({ allergies, onChange }: Props) {
  const { cards, common } = useWords()
  const w = cards.allergies
  const set = (at: number, change: Partial<StandingAllergy>) =>
    onChange((card) => ({
      allergies: card.allergies.map((each, i) => (i === at ? { ...each, ...change } : each)),
    }))
  return (
    <section className={allergies.length > 0 ? "standing some" : "standing"} aria-labelledby="standing-title">
      <h4 id="standing-title">{w.title}</h4>
      <p className="aside">{w.why}</p>
      {allergies.map((allergy, at) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: two may be alike, and none has a name of its own
        <div key={at} className="allergy">
          <Choices
            legend={w.kind}
            options={allergyKinds.map((value) => ({ value, label: w.kinds[value] }))}
            value={allergy.kind}
            onChange={(kind) => set(at, { kind })}
          />
          <div className="pairs">
            <TextField
              name={w.to}
              value={allergy.to}
              most={letters.name}
              onCommit={(to) => set(at, { to })}
            />
            <TextField
              name={w.since}
              value={allergy.since}
              most={letters.name}
              onCommit={(since) => set(at, { since })}
            />
          </div>
          <button
            type="button"
            className="button quiet"
            aria-label={w.remove(allergy.to)}
            onClick={() => onChange((card) => ({ allergies: card.allergies.filter((_, i) => i !== at) }))}
          >
            {common.actions.remove}
          </button>
        </div>
      ))}
      {allergies.length < counts.allergies.high && (
        <button
          type="button"
          className="button"
          onClick={() => onChange((card) => ({ allergies: [...card.allergies, unknown] }))}
        >
          {w.add}
        </button>
      )}
    </section>
  )
}
