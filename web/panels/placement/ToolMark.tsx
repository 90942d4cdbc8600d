import { newPlan } from "../../core/document/newPlan"
import { sectionKindNames } from "../../core/kinds/kindRecords"
import type { ToolName } from "../../core/placement/tools"
import type { Mark } from "../../drawing/mark"
import { dividerMark, hairlineMark, kindMarks, selectMarks, toolPage } from "../../drawing/toolMarks"
import { paintedMark } from "../fields/paintedMark"

const plan = newPlan(new Date(0))

const marksOf = new Map<ToolName, readonly Mark[]>([
  ["select", selectMarks],
  ...sectionKindNames.map((kind) => [kind, kindMarks(kind, plan)] as const),
  ["divide", [dividerMark]],
  ["hairline", [hairlineMark]],
])

/** The mark that a tool draws, drawn by the code that draws the map. */
export const ToolMark = ({ tool }: { tool: ToolName }) => (
  <svg className="tool-mark" viewBox={`0 0 ${toolPage.widthMm} ${toolPage.heightMm}`} aria-hidden="true">
    {marksOf
      .get(tool)
      ?.flatMap(paintedMark)
      .map((path, i) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: the marks of a tool never change their order
        <path key={i} {...path} />
      ))}
  </svg>
)
