import { type ClientCard, cardColours } from "../../core/cards/card"
import { letters } from "../../core/fields/limits"
import { todayHere } from "../../session/cards/nextVisit"
import { useWords } from "../../session/words"
import { languageNames, languages } from "../../words/every/languages"
import { Choices } from "../fields/Choices"
import { SelectField } from "../fields/SelectField"
import { TextField } from "../fields/TextField"
import type { CardEdit } from "./cardPageProps"
import { NoteField } from "./NoteField"

type Props = { card: ClientCard; onChange: (edit: CardEdit) => void }

/** Who the client is, and what the salon wrote down. */
export function CardFields({ card, onChange }: Props) {
  const { cards, common } = useWords()
  const w = cards.card
  return (
    <section className="card-fields">
      <div className="pairs">
        <TextField
          name={w.name}
          value={card.name}
          most={letters.name}
          onCommit={(name) => name.trim() && onChange(() => ({ name: name.trim() }))}
        />
        <TextField
          name={w.phone}
          value={card.phone}
          most={letters.name}
          onCommit={(phone) => onChange(() => ({ phone: phone.trim() }))}
        />
      </div>
      <NoteField name={w.note} value={card.note} onCommit={(note) => onChange(() => ({ note }))} />
      <Choices
        legend={w.colour}
        options={cardColours.map((value) => ({ value, label: w.colours[value] }))}
        value={card.colour}
        onChange={(colour) => onChange(() => ({ colour }))}
      />
      <SelectField
        name={w.sheetLanguage}
        options={languageNames.map((value) => ({ value: value as string, label: languages[value] }))}
        value={card.sheetLanguage || null}
        onChange={(language) => onChange(() => ({ sheetLanguage: language ?? "" }))}
      />
      <div>
        <Choices
          legend={w.consent}
          options={[
            { value: "yes" as const, label: common.answers.yes },
            { value: "no" as const, label: common.answers.no },
          ]}
          value={card.consent?.said ?? null}
          onChange={(said) => onChange(() => ({ consent: { said, on: todayHere() } }))}
          onClear={() => onChange(() => ({ consent: null }))}
        />
        {card.consent && <p className="aside">{w.consentOn(card.consent.on)}</p>}
      </div>
    </section>
  )
}
