import { sectionNameOf } from "../../../core/document/sectionNameCode"
import type { Crossing } from "../../../core/figures/workingSectionsBelonging"
import { useWords } from "../../../session/words"

/** How much of a section lies in another working section than its own. */
export function CrossingWords({ crossing: { section, home, into, cm2 } }: { crossing: Crossing }) {
  const w = useWords().placement.working
  const names = { section: sectionNameOf(section), home: home.name, into: into.name }
  return <p>{w.crossing({ ...names, areaCm2: cm2 })}</p>
}
