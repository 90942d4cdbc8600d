import type { DirectionName } from "../../../../geometry/parting/direction"
import type { LandmarkName } from "../../../../geometry/scalp/hairlineLandmarks"
import type { WorkingKind, WorkingSide } from "../../../../geometry/working/workingSectionKind"
import type { CoatCode } from "../../../core/placement/coatCodes"
import type { LandmarkCode, Side } from "../../../core/placement/places"
import type { WorkingNameCode } from "../../../core/placement/workingName"
import type { common as english } from "../../en/common/common"
import { type Sentences, say } from "../../say"
import { atLandmark } from "./declined"
import { pieces } from "./pieces"

/** Names that every chapter uses. */
export const common: typeof english = (t) => {
  const sides: Record<Side, string> = { left: "links", right: "rechts", centre: "Mitte" }
  const landmarks: Record<LandmarkName, string> = {
    "centre front": "Stirnmitte",
    recession: "Stirnecke",
    temple: "Schläfe",
    sideburn: "Kotelette",
    "ear top": "Ohr oben",
    "behind ear": "hinter dem Ohr",
    "nape corner": "Nackenecke",
    "centre nape": "Nackenmitte",
  }
  const landmark = ({ landmark: name, side }: LandmarkCode) => {
    if (side === "centre") return landmarks[name]
    if (name === "behind ear") return atLandmark({ landmark: name, side })
    if (name === "centre front" || name === "centre nape") return `${landmarks[name]} ${sides[side]}`
    const which = side === "left" ? "linke" : "rechte"
    return name === "ear top" ? `${which}s ${landmarks[name]}` : `${which} ${landmarks[name]}`
  }
  const directions: Record<DirectionName, string> = {
    "parallel to hairline": "parallel zur Haarlinie",
    horizontal: "waagerecht",
    "diagonal forward": "diagonal nach vorn",
    "diagonal back": "diagonal nach hinten",
    vertical: "senkrecht",
  }
  const workingName: Sentences<WorkingNameCode> = {
    "own-name": ({ name, nth }) => (nth > 1 ? `${name} ${t.whole(nth)}` : name),
    "by-place": ({ kind, side, nth }) => {
      const name = workingArea(kind, side)
      return nth > 1 ? `${name} ${t.whole(nth)}` : name
    },
  }

  const coat = ({ part, mix, rootsToMm }: CoatCode) => {
    const letter = `Mischung ${mix}`
    if (part === "whole") return letter
    return part === "roots"
      ? `${letter} auf den Ansatz bis ${t.told.mm(rootsToMm ?? 0)}`
      : `${letter} auf Längen und Spitzen`
  }

  return {
    done: {},

    actions: {
      save: "Sichern",
      cancel: "Abbrechen",
      close: "Schließen",
      remove: "Entfernen",
      delete: "Löschen",
      change: "Ändern",
      undo: "Rückgängig",
      redo: "Wiederholen",
    },
    fields: {
      clear: (field) => `Leeren: ${field}`,
      expected: ({ name, low, high, unit, examples }) => {
        const span = `${name}: erwartet ${low} bis ${high} ${unit}`.trimEnd()
        return examples ? `${span}, geschrieben als ${examples}.` : `${span}.`
      },
      notKnown: "Nicht bekannt",
      openFile: "Aus Datei öffnen…",
      planFile: "Plandatei",
      notOpened: "Nicht geöffnet. Der Plan auf dem Bildschirm ist unverändert.",
    },
    answers: { yes: "Ja", no: "Nein", notSet: "Nicht gesetzt", notAsked: "Nicht gefragt" },

    sides,
    clientSide: {
      left: "linke Seite des Gastes",
      right: "rechte Seite des Gastes",
      centre: "Mitte",
    },
    onSide: { left: "beim Gast links", right: "beim Gast rechts", centre: "in der Mitte" },
    bothSides: "beide Seiten",

    landmarks,
    landmark,
    landmarkOf: (name, on) => {
      if (name === "centre front" || name === "centre nape") return landmarks[name]
      return on === "both" ? `${landmarks[name]}, beide Seiten` : landmark({ landmark: name, side: on })
    },
    place: {
      "at-landmark": landmark,
      "behind-hairline": ({ behindMm, side }) =>
        side === "centre"
          ? `${t.mm(behindMm)} hinter der Haarlinie`
          : `${t.mm(behindMm)} hinter der Haarlinie, ${sides[side]}`,
    },
    atPlace: {
      "at-landmark": atLandmark,
      "behind-hairline": ({ behindMm, side }) =>
        side === "centre"
          ? `${t.mm(behindMm)} hinter der Haarlinie`
          : `${sides[side]}, ${t.mm(behindMm)} hinter der Haarlinie`,
    },
    hairlinePoint: {
      behind: ({ behindMm, ...at }) => {
        if (behindMm === 0) return `auf der Haarlinie, ${landmark(at)}`
        return behindMm < 0
          ? `${t.mm(-behindMm)} vor der Haarlinie, ${landmark(at)}`
          : `${t.mm(behindMm)} hinter der Haarlinie, ${landmark(at)}`
      },
      along: ({ alongMm }) => `${t.mm(alongMm)} von der Stirnmitte`,
    },

    zones: {
      hairline: "Haarlinie",
      top: "Oberkopf",
      left: "linke Seite",
      right: "rechte Seite",
      back: "Hinterkopf",
    },
    strandParts: { roots: "Ansatz", midLengths: "Längen", ends: "Spitzen" },

    kinds: {
      slice: "Slice",
      weave: "Weaving",
      backcomb: "Toupage",
      painted: "gemalte Partie",
      "left-out": "ausgelassenes Haar",
    },
    carriers: { foil: "Folie", board: "Board", "open-air": "ohne Folie", film: "Abdeckfolie" },
    foilLies: {
      down: "hängt nach unten",
      up: "nach oben gelegt",
      "toward-face": "zum Gesicht",
      "away-from-face": "vom Gesicht weg",
    },

    directions,
    direction: ({ name, degrees }) =>
      name === "parallel to hairline" ? directions[name] : `${directions[name]} ${t.whole(degrees)}°`,

    foil: (number, piece) => pieces(t).names([number], piece),
    foils: (numbers, piece) => pieces(t).names(numbers, piece),
    foilCount: (count, piece) => pieces(t).count(count, piece),
    sectionName: {
      foil: ({ number }) => pieces(t).names([number]),
      panel: ({ number }) => pieces(t).names([number], "panel"),
      "left-out": ({ name }) => name || "ausgelassenes Haar",
    },

    mix: (letter) => `Mischung ${letter}`,
    coats: (coats) => {
      const [first, second = null] = coats.map((each) => coat(each))
      const afterMin = coats.at(-1)?.afterMin
      if (second === null) return first
      return afterMin === undefined
        ? `${first}, dann ${second}`
        : `${first}; ${t.minutes(afterMin)} später ${second}`
    },
    twoStrips: "Balken in zwei Streifen: oben die Mischung am Ansatz, unten die auf den Spitzen.",
    workingName,
    workingTitle: (code) => t.capital(say<WorkingNameCode>(workingName, code)),

    minute: ({ atMin, on, longestMin, waiting, off, piece }) =>
      [
        `Minute ${t.whole(atMin)}: ${pieces(t).count(on, piece)} ${t.count(on, { one: "liegt", other: "liegen" })}`,
        ...(on > 0 ? [`die längste seit ${t.minutes(longestMin)}`] : []),
        t.count(waiting, { one: "# folgt noch", other: "# folgen noch" }),
        t.count(off, { one: "# ist ab", other: "# sind ab" }),
      ].join(", "),

    figures: t,
    units: {
      mm: "mm",
      cm: "cm",
      inches: "Zoll",
      cm2: "cm²",
      g: "g",
      min: "min",
      percent: "%",
      degrees: "°",
      celsius: "°C",
      micrometres: "µm",
      hairsPerCm2: "Haare pro cm²",
      vol: "Vol",
      levels: "Stufen",
      years: "Jahre",
      weeks: "Wochen",
    },
  }
}

function workingArea(kind: WorkingKind, side: WorkingSide): string {
  if (side === "centre") return workingKinds[kind]
  return `${workingKinds[kind]} ${side === "left" ? "links" : "rechts"}`
}

const workingKinds: Record<WorkingKind, string> = {
  triangle: "Dreieck",
  frame: "Gesichtsrahmen",
  front: "Vorderkopf",
  top: "Oberkopf",
  side: "Seite",
  crown: "Wirbelpartie",
  behind: "Oberkopf und Hinterkopf",
  around: "Seiten und Hinterkopf",
  back: "Hinterkopf",
}
