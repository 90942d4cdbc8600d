import { lazy, Suspense } from "react"
import { useSession } from "../../session/usePlan"
import { useWords } from "../../session/words"
import { FoilList } from "./FoilList"

/** Loaded beside the map, not before it. */
const FoilEditor = lazy(async () => ({ default: (await import("./FoilEditor")).FoilEditor }))
const SelectedActions = lazy(async () => ({ default: (await import("./SelectedActions")).SelectedActions }))
const AddByTyping = lazy(async () => ({ default: (await import("./AddByTyping")).AddByTyping }))
const TechniquesPart = lazy(async () => ({
  default: (await import("./techniques/TechniquesPart")).TechniquesPart,
}))
const HairlinePanel = lazy(async () => ({
  default: (await import("./hairline/HairlinePanel")).HairlinePanel,
}))
const OverlapList = lazy(async () => ({ default: (await import("./OverlapList")).OverlapList }))
const SectionNotes = lazy(async () => ({ default: (await import("./SectionNotes")).SectionNotes }))
const WorkingPart = lazy(async () => ({ default: (await import("./working/WorkingPart")).WorkingPart }))
const Regrowth = lazy(async () => ({ default: (await import("../cards/Regrowth")).Regrowth }))
const ZoneTotals = lazy(async () => ({ default: (await import("./ZoneTotals")).ZoneTotals }))

/** What stands beside the map: the foils in order, the one in hand, and drawing without a pointer. */
export function FoilPanel() {
  const shapes = useSession(({ tool }) => tool === "hairline")
  return (
    <aside className="list" aria-label={useWords().placement.list.panel}>
      <Suspense>{shapes && <HairlinePanel />}</Suspense>
      <FoilList />
      <Suspense>
        <Regrowth />
        <OverlapList />
        <SectionNotes />
        <div className="in-hand">
          <SelectedActions />
          <FoilEditor />
        </div>
        <WorkingPart />
        <TechniquesPart />
        <AddByTyping />
        <ZoneTotals />
      </Suspense>
    </aside>
  )
}
