import { retryWords, wordsIfHere } from "../../session/words"

/** What a part takes of the page: a whole screen, the list beside the map, or a line of the bar. */
export type PartShape = "page" | "screen" | "aside" | "line"

type Props = { shape: PartShape; onRetry: () => void }

/** Says that a part is not there, and tries again. Where the words themselves have not come, a sign must do. */
export function PartFault({ shape, onRetry }: Props) {
  const w = wordsIfHere()?.plans.parts
  const again = () => {
    retryWords()
    onRetry()
  }
  const said = (
    <div className="part-fault" role="alert">
      {w && (
        <p>
          {w.failed} {w.stays}
        </p>
      )}
      <button type="button" className="button" aria-label={w ? undefined : "↻"} onClick={again}>
        {w?.tryAgain ?? "↻"}
      </button>
      {shape !== "line" && (
        <button type="button" className="button quiet" aria-label={w ? undefined : "⟳"} onClick={reload}>
          {w?.reload ?? "⟳"}
        </button>
      )}
    </div>
  )
  if (shape === "line") return said
  return shape === "aside" ? <aside className="list">{said}</aside> : <main>{said}</main>
}

const reload = () => location.reload()
