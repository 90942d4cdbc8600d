import { lazy, Suspense } from "react"
import { sliceDepthMm } from "../../../presets/placement/foils"
import { kindRecords } from "../../core/kinds/kindRecords"
import { kindDrawn } from "../../core/placement/tools"
import { sessionStore, takeTool } from "../../session/sessionStore"
import { useSession } from "../../session/usePlan"
import { useWords } from "../../session/words"
import { Choices } from "../fields/Choices"
import { labelledOptions } from "../fields/options"
import { depthOptions, depthWordOf } from "./sectionChoices"
import { ToolMark } from "./ToolMark"

const SnapFields = lazy(async () => ({ default: (await import("./SnapFields")).SnapFields }))
const LandmarkSides = lazy(async () => ({
  default: (await import("./hairline/LandmarkSides")).LandmarkSides,
}))
const HandSwitches = lazy(async () => ({ default: (await import("./HandSwitches")).HandSwitches }))

/** What the hand does on the map: the section to draw, how its parting runs, what of it is taken. */
export function ToolRail() {
  const { placement } = useWords()
  const w = placement.toolRail
  const tool = useSession((session) => session.tool)
  const way = useSession((session) => session.way)
  const next = useSession((session) => session.next)
  const kind = kindDrawn(tool)
  const setNext = (change: Partial<typeof next>) => sessionStore.setState({ next: { ...next, ...change } })
  return (
    <div className="tools">
      <div className="tool-choices">
        <Choices
          legend={w.draw}
          options={labelledOptions(w.tools).map((option) => ({
            ...option,
            mark: <ToolMark tool={option.value} />,
          }))}
          value={tool}
          onChange={takeTool}
        />
      </div>
      <Suspense>{tool === "hairline" && <LandmarkSides />}</Suspense>
      {tool !== "select" && tool !== "hairline" && (
        <div className="tool-options">
          <Choices
            legend={w.partingShape}
            options={labelledOptions(w.ways)}
            value={way}
            onChange={(value) => sessionStore.setState({ way: value })}
          />
          {tool !== "divide" && (
            <>
              <Suspense>{way !== "hairline" && <SnapFields />}</Suspense>
              <Choices
                legend={w.takeHair}
                options={labelledOptions(w.taken)}
                value={next.taken}
                onChange={(taken) => setNext({ taken })}
              />
            </>
          )}
          {kind && kindRecords[kind].isDepthWorded && (
            <Choices
              legend={w.depth}
              options={depthOptions(placement)}
              value={depthWordOf(next.depthMm[kind])}
              onChange={(word) => setNext({ depthMm: { ...next.depthMm, [kind]: sliceDepthMm[word].value } })}
            />
          )}
        </div>
      )}
      <Suspense>
        <HandSwitches />
      </Suspense>
    </div>
  )
}
