import { type RestState, restStore } from "../../session/chair/restStore"
import { Ticking } from "../../session/chair/Ticking"
import { useRest } from "../../session/chair/useRest"

/** How the rest of the service stands after what has happened. */
export function Outlook() {
  const rules = useRest((rest) => rest.conflicts.map(({ rule }) => rule))
  if (rules === null) return null
  return (
    <div className="outlook">
      <p>
        <Ticking of={restStore} words={standWords} />
      </p>
      {rules.map((rule) => (
        <p className="said refused" key={rule}>
          <Ticking
            of={restStore}
            words={({ rest }) => rest?.conflicts.find((each) => each.rule === rule)?.why ?? ""}
          />
        </p>
      ))}
    </div>
  )
}

const standWords = ({ rest }: RestState) =>
  `As it stands: last foil on at minute ${rest?.lastOnMin}, all off at minute ${rest?.rinseMin}.`
