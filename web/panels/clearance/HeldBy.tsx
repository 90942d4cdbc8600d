import type { Finding } from "../../core/cautions/cautions"
import { useWords } from "../../session/words"
import { say } from "../../words/say"

/** Why a bowl is not to be mixed, in sentences; nothing where nothing holds it. */
export function HeldBy({ stops }: { stops: readonly Finding[] }) {
  const { cautions } = useWords()
  const sentences = new Set(stops.map(({ why }) => cautions.held(say(cautions.why, why))))
  if (sentences.size === 0) return null
  return (
    <div role="alert">
      {[...sentences].map((sentence) => (
        <p className="said refused" key={sentence}>
          {sentence}
        </p>
      ))}
    </div>
  )
}
