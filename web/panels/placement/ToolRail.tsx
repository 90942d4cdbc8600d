import { lazy, Suspense } from "react"
import { sliceDepthMm } from "../../../presets/placement/foils"
import type { PartingWay, ToolName } from "../../session/sessionStore"
import { sessionStore, takeTool } from "../../session/sessionStore"
import { useSession } from "../../session/usePlan"
import { Choices } from "../fields/Choices"
import { depthOptions, depthWordOf } from "./sectionChoices"

const SnapFields = lazy(async () => ({ default: (await import("./SnapFields")).SnapFields }))
const LandmarkSides = lazy(async () => ({
  default: (await import("./hairline/LandmarkSides")).LandmarkSides,
}))
const HandSwitches = lazy(async () => ({ default: (await import("./HandSwitches")).HandSwitches }))

const tools: readonly { value: ToolName; label: string }[] = [
  { value: "select", label: "Select" },
  { value: "slice", label: "Slice" },
  { value: "weave", label: "Weave" },
  { value: "backcomb", label: "Backcomb" },
  { value: "left-out", label: "Left out" },
  { value: "divide", label: "Divide" },
  { value: "hairline", label: "Hairline" },
]

const ways: readonly { value: PartingWay; label: string }[] = [
  { value: "hairline", label: "Along hairline" },
  { value: "straight", label: "Straight" },
  { value: "freehand", label: "Freehand" },
]

/** What the hand does on the map: the section to draw, how its parting runs, what of it is taken. */
export function ToolRail() {
  const tool = useSession((session) => session.tool)
  const way = useSession((session) => session.way)
  const next = useSession((session) => session.next)
  const setNext = (change: Partial<typeof next>) => sessionStore.setState({ next: { ...next, ...change } })
  return (
    <div className="tools">
      <Choices legend="Draw" options={tools} value={tool} onChange={takeTool} />
      <Suspense>{tool === "hairline" && <LandmarkSides />}</Suspense>
      {tool !== "select" && tool !== "hairline" && (
        <>
          <Choices
            legend="Parting"
            options={ways}
            value={way}
            onChange={(value) => sessionStore.setState({ way: value })}
          />
          {tool !== "divide" && (
            <>
              <Suspense>{way !== "hairline" && <SnapFields />}</Suspense>
              <Choices
                legend="Take hair"
                options={[
                  { value: "front", label: "In front" },
                  { value: "behind", label: "Behind" },
                ]}
                value={next.taken}
                onChange={(taken) => setNext({ taken })}
              />
            </>
          )}
          {tool === "slice" && (
            <Choices
              legend="Depth"
              options={depthOptions}
              value={depthWordOf(next.depthMm.slice)}
              onChange={(word) => setNext({ depthMm: { ...next.depthMm, slice: sliceDepthMm[word].value } })}
            />
          )}
        </>
      )}
      <Suspense>
        <HandSwitches />
      </Suspense>
    </div>
  )
}
