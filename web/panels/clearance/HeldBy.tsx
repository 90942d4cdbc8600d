import type { Finding } from "../../core/cautions/cautions"
import { useWords } from "../../session/words"
import { say } from "../../words/say"

/**
 * Why nothing more is to be mixed or begun, in sentences; nothing where nothing holds it. Where foils are held too it
 * says first what that means for them.
 */
export function HeldBy({ stops, holdsFoils }: { stops: readonly Finding[]; holdsFoils: boolean }) {
  const { cautions } = useWords()
  const sentences = new Set(stops.map(({ why }) => cautions.held(say(cautions.why, why))))
  if (sentences.size === 0) return null
  return (
    <div role="alert">
      {holdsFoils && <p className="large">{cautions.clearance.chairHeld}</p>}
      {[...sentences].map((sentence) => (
        <p className="said refused" key={sentence}>
          {sentence}
        </p>
      ))}
    </div>
  )
}
