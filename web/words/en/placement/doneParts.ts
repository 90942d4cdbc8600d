import type { whorlTurns } from "../../../../geometry/parting/wornParting"
import type { LandmarkName } from "../../../../geometry/scalp/hairlineLandmarks"
import type { WorkingStartId } from "../../../../presets/placement/workingSections"
import type { Sides } from "../../../core/document/hairlineMoves"
import type { SectionNameCode } from "../../../core/document/sectionNameCode"
import type { WorkingNameCode } from "../../../core/placement/workingName"
import { say } from "../../say"
import type { Tools } from "../../tools"
import type { CommonWords } from "../common/common"
import { stack } from "./stack"
import { working } from "./working"

export const hairlineDone = (t: Tools, { landmarkOf }: CommonWords) => ({
  "move-landmark": ({ name, sides }: { name: LandmarkName; sides: Sides }) =>
    `Move ${landmarkOf(name, sides)}`,
  "reset-landmark": ({ name, sides }: { name: LandmarkName; sides: Sides }) =>
    `Reset ${landmarkOf(name, sides)}`,
  "reset-hairline": "Reset the hairline",
  "set-usual-parting": "Set the usual parting",
  "clear-usual-parting": "Clear the usual parting",
  "set-whorl": ({ turns }: { turns: (typeof whorlTurns)[number] }) =>
    t.spelled({
      clockwise: "Set the crown swirl: clockwise",
      anticlockwise: "Set the crown swirl: anticlockwise",
      none: "Set the crown swirl: none",
    })[turns],
  "clear-whorl": "Clear the crown swirl",
  "move-whorl": "Move the crown swirl",
})

export const workingDone = (t: Tools, names: CommonWords) => {
  const { sectionName, workingName } = names
  const { starts } = working(t, names)
  const nameOf = (sections: readonly SectionNameCode[]) =>
    sections.length === 1
      ? say<SectionNameCode>(sectionName, sections[0])
      : t.count(sections.length, { one: "# section", other: "# sections" })
  const named = (name: WorkingNameCode) => say<WorkingNameCode>(workingName, name)
  return {
    divide: ({ start }: { start: WorkingStartId }) => `Divide: ${starts[start].name}`,
    "draw-section-line": "Draw a section line",
    "move-section-line": "Move the section line",
    "bend-section-line": "Bend the section line",
    "nudge-section-line": ({ way }: { way: "face" | "nape" | "left" | "right" }) =>
      t.spelled(lineNudges)[way],
    "mirror-section-line": "Mirror the section line",
    "remove-section-line": ({ more }: { more: number }) =>
      more === 0
        ? "Remove the section line"
        : `Remove the section line and ${t.count(more, { one: "# that ended on it", other: "# that ended on it" })}`,
    "remove-section-lines": "Remove all section lines",
    "number-by-section": "Number by section and side",
    "apply-by-section": "Apply by section and side",
    "rename-section": ({ name, to }: { name: WorkingNameCode; to: string }) =>
      to ? `Rename ${named(name)} to ${to}` : `Rename ${named(name)}`,
    "work-earlier": ({ name }: { name: WorkingNameCode }) => `Work ${named(name)} earlier`,
    "work-later": ({ name }: { name: WorkingNameCode }) => `Work ${named(name)} later`,
    "trim-to-section": ({ sections }: { sections: readonly SectionNameCode[] }) =>
      `Trim ${nameOf(sections)} to the section of the head`,
    "split-at-line": ({ sections }: { sections: readonly SectionNameCode[] }) =>
      `Split ${nameOf(sections)} at the section line`,
    "let-cross": ({ sections }: { sections: readonly SectionNameCode[] }) =>
      `Let ${nameOf(sections)} cross the section line`,
  }
}

const lineNudges = {
  face: "Move the section line towards the face",
  nape: "Move the section line towards the nape",
  left: "Move the section line to the client’s left",
  right: "Move the section line to the client’s right",
}

export const stackDone = (t: Tools, names: CommonWords) => {
  const { total, title } = stack(t, names)
  return {
    /** While the stack is being chosen. */
    "stack-behind": ({ section }: { section: SectionNameCode }) => title(section),
    stack: ({ section, each, sides, foils, sections }: Stacked) => {
      const behind = `Stack ${t.whole(each)} behind ${say<SectionNameCode>(names.sectionName, section)}`
      return sides === 2 ? `${behind} on each side: ${total({ foils, sections })}` : behind
    },
  }
}

type Stacked = { section: SectionNameCode; each: number; sides: 1 | 2; foils: number; sections: number }
