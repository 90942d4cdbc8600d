import type { WorkingStartId } from "../../../../presets/placement/workingSections"
import type { SectionNameCode } from "../../../core/document/sectionNameCode"
import type { WorkingNameCode } from "../../../core/placement/workingName"
import { say } from "../../say"
import type { Tools } from "../../tools"
import type { CommonWords } from "../common/common"

/** How the head is divided before work begins. */
export const working = (t: Tools, { sectionName, workingName }: CommonWords) => {
  const named = (code: WorkingNameCode) => say<WorkingNameCode>(workingName, code)
  const starts: Record<WorkingStartId, { name: string; aim: string }> = t.spelled({
    "four-section": { name: "Four sections", aim: "Centre front to nape, and ear to ear over the crown." },
    "four-with-triangle": {
      name: "Four sections with a triangle",
      aim: "The same, with a triangle over the forehead kept apart.",
    },
    triangle: { name: "Triangle at the top", aim: "From both recessions to a point on the top." },
    "face-frame-triangle": {
      name: "Face-frame triangle",
      aim: "From above each ear to a point on the top.",
    },
    profile: { name: "Centre line", aim: "Centre front to centre nape." },
    radial: { name: "Ear to ear", aim: "From ear to ear over the crown." },
    horseshoe: { name: "Horseshoe", aim: "From one recession round the crown to the other." },
  })
  return {
    divide: "Divide into sections",
    title: (sections: number) => t.count(sections, { one: "# section", other: "# sections" }),
    inOrder: "in order of working",
    sectionLines: "Section lines",
    divideFurther: "Divide further",
    orDraw: "Or choose “Divide” and draw a section line from edge to edge.",
    starts,

    nameOf: (numeral: string) => `Name of section ${numeral}`,
    work: ({ name, by }: { name: WorkingNameCode; by: -1 | 1 }) =>
      by < 0 ? `Work ${named(name)} earlier` : `Work ${named(name)} later`,
    select: "Select",
    selectFoils: (name: WorkingNameCode) => `Select the foils of ${named(name)}`,
    numberBySection: "Number by section and side",
    applyBySection: "Apply by section and side",
    groupList: "Group the list of foils",
    noFoils: "no foils",
    foils: (foils: number) => t.count(foils, { one: "# foil", other: "# foils" }),
    minutes: (low: number, high: number) => t.minuteRange(low, high),

    line: ({ number, lengthMm }: { number: number; lengthMm: number }) =>
      `Section line ${t.whole(number)}, ${t.mm(lengthMm)}`,
    removeAll: "Remove all",
    nudges: {
      face: "Towards the face",
      nape: "Towards the nape",
      right: "To the client’s right",
      left: "To the client’s left",
    },
    mirror: "Mirror",
    remove: "Remove",

    across: "Across a section line",
    crossesInto: (name: WorkingNameCode) => `× crosses into ${named(name)}`,
    crossing: ({ section, home, into, areaCm2 }: Crossing) =>
      `${t.capital(say<SectionNameCode>(sectionName, section))}, of ${named(home)}: ${t.area(areaCm2)} of its scalp lies in ${named(into)}.`,
    fixes: {
      trim: { one: "Trim here", all: (count: number) => `Trim all ${t.whole(count)} here` },
      split: { one: "Split in two", all: (count: number) => `Split all ${t.whole(count)} in two` },
      letCross: { one: "Let be", all: (count: number) => `Let all ${t.whole(count)} be` },
    },
    /** The same for who hears the page, with the section that is meant. */
    fixesOf: {
      trim: (section: SectionNameCode) => `Trim ${say<SectionNameCode>(sectionName, section)} here`,
      split: (section: SectionNameCode) => `Split ${say<SectionNameCode>(sectionName, section)} in two`,
      letCross: (section: SectionNameCode) => `Let ${say<SectionNameCode>(sectionName, section)} be`,
    },
  }
}

type Crossing = { section: SectionNameCode; home: WorkingNameCode; into: WorkingNameCode; areaCm2: number }
