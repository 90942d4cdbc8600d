import { pieceOf } from "../../core/kinds/kindRecords"
import { calledBy } from "../../core/kinds/saidPiece"
import { chairStore } from "../../session/chair/chairStore"
import { restStore } from "../../session/chair/restStore"
import { Ticking } from "../../session/chair/Ticking"
import { useService } from "../../session/chair/useChair"
import { useRest } from "../../session/chair/useRest"
import { useWords } from "../../session/words"
import { say } from "../../words/say"

const foilsNow = () => chairStore.getState().live?.chair.foils ?? []

/** How the rest of the service stands after what has happened. */
export function Outlook() {
  const rules = useRest((rest) => rest.conflicts.map(({ code }) => code))
  const piece = useService(({ foils }) => pieceOf(foils)) ?? "foil"
  const { chair, timing } = useWords()
  if (rules === null) return null
  return (
    <div className="outlook">
      <p>
        <Ticking of={restStore} words={({ rest }) => (rest ? chair.floor.outlook(rest, piece) : "")} />
      </p>
      {rules.map((rule) => (
        <p className="said refused" key={rule}>
          <Ticking
            of={restStore}
            words={({ rest }) => {
              const clash = rest?.conflicts.find(({ code }) => code === rule)
              return clash ? say(timing.clashes, calledBy(clash, foilsNow())) : ""
            }}
          />
        </p>
      ))}
    </div>
  )
}
