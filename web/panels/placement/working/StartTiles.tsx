import { type WorkingStart, workingStarts } from "../../../../presets/placement/workingSections"
import { startWorkingSections } from "../../../core/edits/working/addWorkingPartings"
import { commit } from "../../../session/commit"
import { useWords } from "../../../session/words"
import { startPicture } from "./startPicture"

/** The usual ways to divide a head, each with its picture: one touch parts it, one undo takes it back. */
export const StartTiles = () => (
  <ul className="technique-list">
    {workingStarts.map((start) => (
      <li key={start.id}>
        <Tile start={start} />
      </li>
    ))}
  </ul>
)

function Tile({ start }: { start: WorkingStart }) {
  const { name, aim } = useWords().placement.working.starts[start.id]
  const { viewBox, hairline, lines } = startPicture(start)
  return (
    <button
      type="button"
      className="technique working-start"
      onClick={() =>
        commit({ chapter: "placement", code: "divide", start: start.id }, startWorkingSections(start))
      }
    >
      <svg viewBox={viewBox} aria-hidden="true">
        <path className="scalp" d={hairline} />
        {lines.map((line) => (
          <path className="divider" key={line} d={line} />
        ))}
      </svg>
      <span className="technique-name">{name}</span>
      <span>{aim}</span>
    </button>
  )
}
