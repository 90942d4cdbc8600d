import "./cards.css"
import { coatLetters } from "../../core/placement/coatCodes"
import {
  type LastVisit as Last,
  type LastFoil,
  lastVisit,
  type ReactionCode,
} from "../../core/record/lastVisit"
import { nowHere } from "../../session/nowHere"
import { usePlan } from "../../session/usePlan"
import { useWords } from "../../session/words"
import { reactionWords } from "../../words/every/reactionWords"

/** What was done the last time, beside what is planned now: what went wrong comes first. */
export function LastVisit() {
  const w = useWords().cards.last
  const earlier = usePlan((plan) => plan.earlier)
  const note = usePlan((plan) => plan.note)
  const last = earlier ? lastVisit({ earlier }, nowHere().zone) : null
  if (!last) return null
  return (
    <details className="last-visit" open>
      <summary>{w.title(last.day)}</summary>
      <Reactions reactions={last.reactions} />
      <Mixed last={last} />
      {last.foils.length > 0 && <Foils foils={last.foils} />}
      {note.trim() && (
        <>
          <h3>{w.note}</h3>
          <p className="lines">{note}</p>
        </>
      )}
    </details>
  )
}

function Reactions({ reactions }: { reactions: readonly ReactionCode[] }) {
  const words = useWords()
  if (reactions.length === 0) return null
  return (
    <div className="stops-here">
      <h3>{words.cards.last.reactions}</h3>
      <ul>
        {reactions.map((reaction) => (
          <li key={JSON.stringify(reaction)}>
            <strong>{reactionWords(reaction, words)}</strong>
          </li>
        ))}
      </ul>
    </div>
  )
}

function Mixed({ last: { bowls, toners } }: { last: Last }) {
  const w = useWords().cards.last
  if (bowls.length + toners.length === 0) return null
  return (
    <>
      <h3>{w.formula}</h3>
      <ul>
        {bowls.map((bowl, at) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: bowls are kept in their order
          <li key={at}>{w.bowl({ ...bowl, volume: bowl.developerVolume })}</li>
        ))}
        {toners.map(({ zone, product, minutesOn }) => (
          <li key={zone}>{w.toner({ product: product ?? w.unknown, minutes: minutesOn })}</li>
        ))}
      </ul>
    </>
  )
}

function Foils({ foils }: { foils: readonly LastFoil[] }) {
  const { cards, common } = useWords()
  const w = cards.last
  return (
    <table className="last-foils">
      <caption>{w.foils}</caption>
      <thead>
        <tr>
          <th scope="col">{w.foil}</th>
          <th scope="col">{w.mix}</th>
          <th scope="col">{w.minutesOn}</th>
          <th scope="col">{w.level}</th>
        </tr>
      </thead>
      <tbody>
        {foils.map(({ number, coats, minutesOn, level }) => (
          <tr key={number}>
            <th scope="row">{number}</th>
            <td>
              {coats.length > 1 ? common.coats(coats) : coats.length > 0 ? coatLetters(coats) : w.unknown}
            </td>
            <td>{minutesOn === null ? w.unknown : Math.round(minutesOn)}</td>
            <td>{level ?? w.unknown}</td>
          </tr>
        ))}
      </tbody>
    </table>
  )
}
