import { AddByWords } from "./AddByWords"
import { FoilEditor } from "./FoilEditor"
import { FoilList } from "./FoilList"

/** What stands beside the map: the foils in order, the one in hand, and drawing without a pointer. */
export function FoilPanel() {
  return (
    <aside className="list" aria-label="Foils">
      <FoilList />
      <FoilEditor />
      <AddByWords />
    </aside>
  )
}
