import type { DirectionName } from "../../../../geometry/parting/direction"
import type { LandmarkName } from "../../../../geometry/scalp/hairlineLandmarks"
import type { SectionKind } from "../../../../geometry/section/section"
import type { SectionNameCode } from "../../../core/document/sectionNameCode"
import type { NudgeWay } from "../../../core/placement/tools"
import { say } from "../../say"
import type { Tools } from "../../tools"
import type { CommonWords } from "../common/common"
import { hairlineDone, stackDone, workingDone } from "./doneParts"

/** What undo calls a change of this chapter. */
export const done = (t: Tools, names: CommonWords) => {
  const { kinds, landmark, directions, sectionName } = names
  const nameOf = (section: SectionNameCode) => say<SectionNameCode>(sectionName, section)
  const count = (verb: string, sections: number) =>
    t.count(sections, { one: `${verb} a section`, other: `${verb} # sections` })
  return {
    ...hairlineDone(t, names),
    ...workingDone(t, names),
    ...stackDone(t, names),
    "draw-section": ({ kind }: { kind: SectionKind }) => `Draw ${kinds[kind]}`,
    "add-along-hairline": ({
      kind,
      side,
      from,
      to,
    }: {
      kind: SectionKind
      side: "left" | "right"
      from: LandmarkName
      to: LandmarkName
    }) => `Add ${kinds[kind]}, ${landmark({ landmark: from, side })} to ${landmark({ landmark: to, side })}`,
    "change-kind": ({ kind }: { kind: SectionKind }) => `Change to ${kinds[kind]}`,
    rename: ({ section }: { section: SectionNameCode }) => `Rename ${nameOf(section)}`,
    split: ({ section }: { section: SectionNameCode }) => `Split ${nameOf(section)} into foils`,
    reduce: ({ section }: { section: SectionNameCode }) => `Reduce ${nameOf(section)}`,
    "set-depth": "Change the depth",
    "take-hair": ({ taken }: { taken: "front" | "behind" }): string =>
      taken === "front" ? "Take hair in front" : "Take hair behind",
    "set-stitch": "Change the stitch",
    "set-gap": "Change the gap",
    "set-dip": "Change the weave depth",
    "set-base": ({ base }: { base: "slice" | "weave" }) => `Backcomb from a ${kinds[base]}`,
    "set-pushed-share": "Change the share backcombed",
    "set-cushion": "Change the cushion",
    "set-edge": "Change the painted edge",
    "draw-edge": "Draw the painted edge",
    "set-edge-high": "Change where painting starts",
    "set-edge-drop": "Change how far the edge drops",
    "set-feather": "Change the feather",
    "set-saturation": "Change how full it is painted",
    "set-note": "Change the note",
    "set-map-number": "Renumber",
    "set-start": "Change where product starts",
    "set-coated": "Change the coated part",
    "set-faces": "Change the sides coated",
    "set-carrier": "Change what it is wrapped in",
    "set-elevation": "Change the elevation",
    "set-over-direction": "Change the over-direction",
    "set-foil-lie": "Change the foil direction",
    "set-roots-mix": "Change the mix on the roots",
    "set-roots-end": "Change where the roots end",
    "set-roots-order": "Change which mix goes on first",
    "set-roots-after": "Change when the roots go on",
    "use-mix": ({ mix }: { mix: string }) => `Use mix ${mix}`,
    "set-behind": "Move behind the hairline",
    "set-along": "Move along the hairline",
    "set-length": "Change the length",
    "set-angle": "Turn",
    "set-direction": ({ direction }: { direction: DirectionName }) => `Turn ${directions[direction]}`,
    "repeat-behind": "Repeat behind",
    "repeat-behind-both": "Repeat behind, both sides",
    thinner: "Thinner",
    thicker: "Thicker",
    mirror: "Mirror to the other side",
    "break-pair": "Break the pair",
    "towards-hairline": "Move towards the hairline",
    "away-from-hairline": "Move away from the hairline",
    "leave-between": "Leave out the hair between two",
    "leave-veil": "Leave out a veil",
    "leave-baby-hairs": "Leave out baby hairs",
    delete: ({ count: sections }: { count: number }) => count("Delete", sections),
    paste: ({ count: sections }: { count: number }) => count("Paste", sections),
    move: "Move",
    bend: "Bend",
    nudge: ({ mm, way }: { mm: number; way: NudgeWay }) => nudges[way](t.mm(mm)),
    "number-in-order": "Number in the order of application",
    /** Where sections go on after they were moved in the order. */
    "apply-at": ({
      section,
      count: sections,
      place,
      foils,
    }: {
      section: SectionNameCode
      count: number
      place: number
      foils: number
    }) =>
      sections === 1
        ? `${t.capital(nameOf(section))} goes on ${ordinal(place)} of ${t.whole(foils)}`
        : `${t.whole(sections)} sections from ${nameOf(section)} go on ${ordinal(place)} of ${t.whole(foils)}`,
    "apply-left-out": ({ section, count: sections, before, foils }: AppliedLeftOut) =>
      sections === 1
        ? `${t.capital(nameOf(section))} stands after ${t.whole(before)} of ${t.whole(foils)} foils`
        : `${t.whole(sections)} sections from ${nameOf(section)} stand after ${t.whole(before)} of ${t.whole(foils)} foils`,
    "place-technique": ({ name }: { name: string }) => `Place the technique “${name}”`,
  }

  function ordinal(place: number) {
    return t.ordinal(place, { one: "#st", two: "#nd", few: "#rd", other: "#th" })
  }
}

const nudges: Record<NudgeWay, (mm: string) => string> = {
  away: (mm) => `Move ${mm} away from the hairline`,
  towards: (mm) => `Move ${mm} towards the hairline`,
  right: (mm) => `Move ${mm} along the hairline, to the client’s right`,
  left: (mm) => `Move ${mm} along the hairline, to the client’s left`,
}

type AppliedLeftOut = { section: SectionNameCode; count: number; before: number; foils: number }
