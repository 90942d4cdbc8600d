import { useState } from "react"
import { letters } from "../../core/fields/limits"
import { sessionStore } from "../../session/sessionStore"
import { useWords } from "../../session/words"
import { TextField } from "../fields/TextField"

type Props = { things: readonly string[]; isHeld: boolean; onAsked: (by: string) => void }

/** The chair begins with what nobody has asked: signed as asked aloud, or answered. */
export function AskAloud({ things, isHeld, onAsked }: Props) {
  const [by, sign] = useState("")
  const w = useWords().chair.start
  return (
    <section className="ask-aloud" aria-labelledby="ask-aloud-title">
      <h2 id="ask-aloud-title">{w.notAsked(things.length)}</h2>
      <ul>
        {things.map((thing) => (
          <li key={thing}>{thing}</li>
        ))}
      </ul>
      <TextField name={w.askedBy} value={by} most={letters.name} onCommit={sign} />
      <div className="touches">
        <button
          type="button"
          className="touch strong"
          disabled={!isHeld || by.trim() === ""}
          onClick={() => onAsked(by.trim())}
        >
          {w.askedAloud}
        </button>
        <button type="button" className="touch" onClick={() => sessionStore.setState({ screen: "client" })}>
          {w.answer}
        </button>
      </div>
    </section>
  )
}
