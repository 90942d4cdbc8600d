import { fieldOf, type Holds } from "../../core/cautions/clearance"
import type { Piece } from "../../core/kinds/kindRecord"
import { goToField } from "../../session/clearance/fieldWanted"
import { useWords } from "../../session/words"
import { say } from "../../words/say"
import "./clearance.css"

type Props = { holds: Holds; held: Piece | null }

/**
 * Why nothing more is to be mixed or begun, in sentences, and each open question with the way to its answer; nothing
 * where nothing holds it. `held`: what is not to be begun any more, which it says first; null where no foil waits.
 */
export function HeldBy({ holds: { stops, notAsked }, held }: Props) {
  const { cautions } = useWords()
  const { clearance: said } = cautions
  const sentences = new Set(stops.map(({ why }) => cautions.held(say(cautions.why, why))))
  if (sentences.size + notAsked.length === 0) return null
  return (
    <div role="alert">
      {held && <p className="large">{sentences.size > 0 ? said.chairHeld(held) : said.chairOpen(held)}</p>}
      {[...sentences].map((sentence) => (
        <p className="said refused" key={sentence}>
          {sentence}
        </p>
      ))}
      {notAsked.length > 0 && (
        <div className="clearance-list">
          <ul aria-label={said.notAskedTitle}>
            {notAsked.map((thing) => (
              <li key={JSON.stringify(thing)}>
                <button type="button" className="row" onClick={() => goToField(fieldOf(thing))}>
                  {say(cautions.notAsked, thing)}
                </button>
              </li>
            ))}
          </ul>
        </div>
      )}
    </div>
  )
}
