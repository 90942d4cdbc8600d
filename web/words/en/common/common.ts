import type { Direction, DirectionName } from "../../../../geometry/parting/direction"
import type { LandmarkName } from "../../../../geometry/scalp/hairlineLandmarks"
import type { CarrierKind, FoilLie, SectionKind } from "../../../../geometry/section/section"
import type { WorkingKind, WorkingSide } from "../../../../geometry/working/workingSectionKind"
import type { StrandPart, Zone } from "../../../core/document/consultation"
import type { Sides } from "../../../core/document/hairlineMoves"
import type { SectionNameCode } from "../../../core/document/sectionNameCode"
import type { Piece } from "../../../core/kinds/kindRecord"
import type { CoatCode } from "../../../core/placement/coatCodes"
import type { HairlinePointCode, LandmarkCode, PlaceCode, Side } from "../../../core/placement/places"
import type { WorkingNameCode } from "../../../core/placement/workingName"
import type { MinuteCode } from "../../../core/schedule/minuteCode"
import { type Sentences, say } from "../../say"
import type { Tools } from "../../tools"
import { pieces } from "./pieces"

/** Names that every chapter uses. A name is written as it stands within a sentence; `t.capital` begins a line with it. */
export const common = (t: Tools) => {
  const sides: Record<Side, string> = t.spelled({ left: "left", right: "right", centre: "centre" })
  const landmarks: Record<LandmarkName, string> = t.spelled({
    "centre front": "centre front",
    recession: "recession",
    temple: "temple",
    sideburn: "sideburn",
    "ear top": "top of the ear",
    "behind ear": "behind the ear",
    "nape corner": "nape corner",
    "centre nape": "centre nape",
  })
  const sided: Partial<Record<LandmarkName, (side: "left" | "right") => string>> = {
    "ear top": (side) => `top of the ${sides[side]} ear`,
    "behind ear": (side) => `behind the ${sides[side]} ear`,
  }
  const landmark = ({ landmark: name, side }: LandmarkCode) =>
    side === "centre" ? landmarks[name] : (sided[name]?.(side) ?? `${sides[side]} ${landmarks[name]}`)
  const directions: Record<DirectionName, string> = {
    "parallel to hairline": "parallel to the hairline",
    horizontal: "horizontal",
    "diagonal forward": "diagonal forward",
    "diagonal back": "diagonal back",
    vertical: "vertical",
  }
  const clientSide: Record<Side, string> = {
    left: "the client’s left",
    right: "the client’s right",
    centre: "the middle",
  }

  /** What an area of the divided head is called within a sentence. */
  const workingName: Sentences<WorkingNameCode> = {
    "own-name": ({ name, nth }) => (nth > 1 ? `${name} ${t.whole(nth)}` : name),
    "by-place": ({ kind, side, nth }) => {
      const name = workingArea(kind, side)
      return nth > 1 ? `${name} ${t.whole(nth)}` : name
    },
  }

  const coat = ({ part, mix, rootsToMm, afterMin }: CoatCode) => {
    const letter = `${afterMin ? `${t.minutes(afterMin)} later ` : ""}mix ${mix}`
    if (part === "whole") return letter
    return part === "roots"
      ? `${letter} on the roots to ${t.told.mm(rootsToMm ?? 0)}`
      : `${letter} on mid-lengths and ends`
  }

  return {
    done: {},

    /** What stands on buttons and beside fields of every panel. */
    actions: {
      save: "Save",
      cancel: "Cancel",
      close: "Close",
      remove: "Remove",
      delete: "Delete",
      change: "Change",
      undo: "Undo",
      redo: "Redo",
    },
    fields: {
      /** Takes back what a field holds. */
      clear: (field: string) => `Clear: ${field}`,
      /** What a number may be; `examples` tell how it is written where that is not by decimals. */
      expected: ({ name, low, high, unit, examples }: Expected) => {
        const span = `${name}: expected ${low} to ${high} ${unit}`.trimEnd()
        return examples ? `${span}, typed as ${examples}.` : `${span}.`
      },
      notKnown: "Not known",
      openFile: "Open from a file…",
      planFile: "Plan file",
      notOpened: "This was not opened. The plan on the screen is as it was.",
    },
    answers: { yes: "Yes", no: "No", notSet: "Not set", notAsked: "Not asked" },

    sides,
    /** A side as it is told to whoever faces the client. */
    clientSide,
    onSide: {
      left: "on the client’s left",
      right: "on the client’s right",
      centre: "in the middle",
    } satisfies Record<Side, string>,
    bothSides: "both sides",

    landmarks,
    /** A landmark of one side, such as "left temple". */
    landmark,
    /** A landmark with the sides it is meant on: "temple, both sides", "left temple". */
    landmarkOf: (name: LandmarkName, on: Sides) => {
      if (name === "centre front" || name === "centre nape") return landmarks[name]
      return on === "both" ? `${landmarks[name]}, both sides` : landmark({ landmark: name, side: on })
    },
    /** Where a section lies, as a name: "left temple", "62 mm behind the hairline, left". */
    place: {
      "at-landmark": landmark,
      "behind-hairline": ({ behindMm, side }) =>
        side === "centre"
          ? `${t.mm(behindMm)} behind the hairline`
          : `${t.mm(behindMm)} behind the hairline, ${sides[side]}`,
    } satisfies Sentences<PlaceCode>,
    /** The same within a sentence, after a verb such as "part". */
    atPlace: {
      "at-landmark": (at) => (at.landmark === "behind ear" ? landmark(at) : `at the ${landmark(at)}`),
      "behind-hairline": ({ behindMm, side }) =>
        side === "centre"
          ? `${t.mm(behindMm)} behind the hairline`
          : `on the ${sides[side]}, ${t.mm(behindMm)} behind the hairline`,
    } satisfies Sentences<PlaceCode>,
    /** A point told by the hairline, in two lines. */
    hairlinePoint: {
      behind: ({ behindMm, ...at }: HairlinePointCode) => {
        if (behindMm === 0) return `on the hairline, ${landmark(at)}`
        return behindMm < 0
          ? `${t.mm(-behindMm)} in front of the hairline, ${landmark(at)}`
          : `${t.mm(behindMm)} behind the hairline, ${landmark(at)}`
      },
      along: ({ alongMm }: HairlinePointCode) => `${t.mm(alongMm)} along from ${landmarks["centre front"]}`,
    },

    zones: {
      hairline: "hairline",
      top: "top",
      left: "left side",
      right: "right side",
      back: "back",
    } satisfies Record<Zone, string>,
    strandParts: { roots: "roots", midLengths: "mid-lengths", ends: "ends" } satisfies Record<
      StrandPart,
      string
    >,

    kinds: {
      slice: "slice",
      weave: "weave",
      backcomb: "backcomb",
      painted: "painted panel",
      "left-out": "left-out hair",
    } satisfies Record<SectionKind, string>,
    carriers: { foil: "foil", board: "board", "open-air": "open air", film: "film" } satisfies Record<
      CarrierKind,
      string
    >,
    foilLies: {
      down: "hangs down",
      up: "laid up",
      "toward-face": "towards the face",
      "away-from-face": "away from the face",
    } satisfies Record<FoilLie, string>,

    directions,
    /** The direction and its angle; what follows the hairline has no one angle. */
    direction: ({ name, degrees }: Direction) =>
      name === "parallel to hairline" ? directions[name] : `${directions[name]} ${t.whole(degrees)}°`,

    /** A foil by its number on the map; several as one list. */
    foil: (number: number, piece?: Piece) => pieces(t).names([number], piece),
    foils: (numbers: readonly number[], piece?: Piece) => pieces(t).names(numbers, piece),
    foilCount: (count: number, piece?: Piece) => pieces(t).count(count, piece),
    /** What a section is called within a sentence. */
    sectionName: {
      foil: ({ number }) => pieces(t).names([number]),
      panel: ({ number }) => pieces(t).names([number], "panel"),
      "left-out": ({ name }) => name || "left-out hair",
    } satisfies Sentences<SectionNameCode>,

    /** A mix by its letter. */
    mix: (letter: string) => `mix ${letter}`,
    /** What is on a strand, in the order it goes on; one mix by its letter. */
    coats: (coats: readonly CoatCode[]) => coats.map(coat).join(", then "),
    /** How two mixes along a strand stand on a clock. */
    twoStrips: "Two strips: the mix on the roots above, on the ends below.",
    workingName,
    /** The same where it stands alone. */
    workingTitle: (code: WorkingNameCode) => t.capital(say<WorkingNameCode>(workingName, code)),

    /** The head at a minute of the visit. */
    minute: ({ atMin, on, longestMin, waiting, off, piece }: MinuteCode & { piece?: Piece }) =>
      [
        `Minute ${t.whole(atMin)}: ${pieces(t).count(on, piece)} on`,
        ...(on > 0 ? [`the longest for ${t.minutes(longestMin)}`] : []),
        t.count(waiting, { one: "# to come", other: "# to come" }),
        t.count(off, { one: "# off", other: "# off" }),
      ].join(", "),

    /** How figures alone are written: what stands in a table or beside a name. */
    figures: t,
    /** Units as they stand behind the figure of a field. */
    units: {
      mm: "mm",
      cm: "cm",
      inches: "in",
      cm2: "cm²",
      g: "g",
      min: "min",
      percent: "%",
      degrees: "°",
      celsius: "°C",
      micrometres: "µm",
      hairsPerCm2: "hairs per cm²",
      vol: "vol",
      levels: "levels",
      years: "years",
      weeks: "weeks",
    },
  }
}

/** A side of the head is called by its side first, every other area by it last. */
function workingArea(kind: WorkingKind, side: WorkingSide): string {
  if (side === "centre") return workingKinds[kind]
  return kind === "side" ? `${side} side` : `${workingKinds[kind]} ${side}`
}

const workingKinds: Record<WorkingKind, string> = {
  triangle: "triangle",
  frame: "face frame",
  front: "front",
  top: "top",
  side: "side",
  crown: "crown",
  behind: "top and back",
  around: "sides and back",
  back: "back",
}

type Expected = { name: string; low: string; high: string; unit: string; examples: string }

export type CommonWords = ReturnType<typeof common>
