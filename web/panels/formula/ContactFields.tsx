import { type Contact, noContact } from "../../core/document/salon"
import { letters } from "../../core/fields/limits"
import { changeSalonHere } from "../../session/salon/useSalon"
import { useWords } from "../../session/words"
import { TextField } from "../fields/TextField"

/** How the salon is reached, and the emergency number of the place: printed for the client, shown on the red button. */
export function ContactFields({ contact = noContact }: { contact: Contact | undefined }) {
  const w = useWords().formula.stock.contact
  const set = (change: Partial<Contact>) =>
    void changeSalonHere({ chapter: "formula", code: "change-contact" }, (own) => ({
      ...own,
      contact: { ...noContact, ...own.contact, ...change },
    }))
  return (
    <div className="pairs">
      <TextField name={w.name} value={contact.name} most={letters.name} onCommit={(name) => set({ name })} />
      <TextField
        name={w.phone}
        value={contact.phone}
        most={letters.name}
        onCommit={(phone) => set({ phone })}
      />
      <TextField
        name={w.emergency}
        value={contact.emergency}
        most={letters.moment}
        onCommit={(emergency) => set({ emergency })}
      />
    </div>
  )
}
