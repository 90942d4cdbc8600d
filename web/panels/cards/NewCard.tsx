import { useState } from "react"
import { letters } from "../../core/fields/limits"
import { useWords } from "../../session/words"

/** A card begins with initials or a name. */
export function NewCard({ onMake }: { onMake: (name: string) => void }) {
  const w = useWords().cards
  const [name, setName] = useState("")
  return (
    <form
      className="new-card"
      onSubmit={(event) => {
        event.preventDefault()
        if (name.trim()) onMake(name.trim())
      }}
    >
      <input
        type="text"
        aria-label={w.newName}
        placeholder={w.newName}
        value={name}
        maxLength={letters.name}
        autoComplete="off"
        onChange={({ target }) => setName(target.value)}
      />
      <button type="submit" className="button strong" aria-disabled={name.trim() === ""}>
        {w.make}
      </button>
    </form>
  )
}
