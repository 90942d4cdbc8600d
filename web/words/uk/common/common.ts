import type { LandmarkName } from "../../../../geometry/scalp/hairlineLandmarks"
import type { WorkingKind, WorkingSide } from "../../../../geometry/working/workingSectionKind"
import type { CoatCode } from "../../../core/placement/coatCodes"
import type { LandmarkCode, Side } from "../../../core/placement/places"
import type { WorkingNameCode } from "../../../core/placement/workingName"
import type { CommonWords } from "../../en/common/common"
import { type Sentences, say } from "../../say"
import type { Tools } from "../../tools"
import { landmarkIn, landmarkName } from "./landmarks"
import { pieces } from "./pieces"

/** Names that every chapter uses. A name is written as it stands within a sentence; `t.capital` begins a line with it. */
export const common = (t: Tools): CommonWords => {
  const sides: Record<Side, string> = { left: "ліворуч", right: "праворуч", centre: "по центру" }
  const landmark = (at: LandmarkCode) => landmarkIn(at, "named")
  const directions: CommonWords["directions"] = {
    "parallel to hairline": "паралельно лінії росту",
    horizontal: "горизонтально",
    "diagonal forward": "діагональ уперед",
    "diagonal back": "діагональ назад",
    vertical: "вертикально",
  }
  const workingName: Sentences<WorkingNameCode> = {
    "own-name": ({ name, nth }) => (nth > 1 ? `${name} ${t.whole(nth)}` : name),
    "by-place": ({ kind, side, nth }) => {
      const name = workingArea(kind, side)
      return nth > 1 ? `${name} ${t.whole(nth)}` : name
    },
  }
  const landmarks = Object.fromEntries(
    landmarkNames.map((name) => [name, landmarkName(name, "named")]),
  ) as Record<LandmarkName, string>

  const coat = ({ part, mix, rootsToMm }: CoatCode) => {
    const letter = `суміш ${mix}`
    if (part === "whole") return letter
    return part === "roots"
      ? `${letter} на корінь до ${t.told.mm(rootsToMm ?? 0)}`
      : `${letter} на довжину й кінці`
  }

  return {
    done: {},

    actions: {
      save: "Зберегти",
      cancel: "Скасувати",
      close: "Закрити",
      remove: "Прибрати",
      delete: "Видалити",
      change: "Змінити",
      undo: "Відмінити",
      redo: "Повторити",
    },
    fields: {
      clear: (field) => `Очистити: ${field}`,
      expected: ({ name, low, high, unit, examples }) => {
        const span = `${name}: очікується від ${low} до ${high} ${unit}`.trimEnd()
        return examples ? `${span}, запис: ${examples}.` : `${span}.`
      },
      notKnown: "Невідомо",
      openFile: "Відкрити з файлу…",
      planFile: "Файл плану",
      notOpened: "Файл не відкрито. План на екрані не змінився.",
    },
    answers: { yes: "Так", no: "Ні", notSet: "Не вказано", notAsked: "Не запитано" },

    sides,
    clientSide: { left: "лівий бік клієнта", right: "правий бік клієнта", centre: "середина" },
    onSide: {
      left: "на лівому боці клієнта",
      right: "на правому боці клієнта",
      centre: "посередині",
    },
    bothSides: "обидва боки",

    landmarks,
    landmark,
    landmarkOf: (name, on) => {
      if (name === "centre front" || name === "centre nape") return landmarks[name]
      return on === "both" ? `${landmarks[name]}, обидва боки` : landmark({ landmark: name, side: on })
    },
    place: {
      "at-landmark": landmark,
      "behind-hairline": ({ behindMm, side }) =>
        side === "centre"
          ? `${t.mm(behindMm)} від лінії росту`
          : `${t.mm(behindMm)} від лінії росту, ${sides[side]}`,
    },
    atPlace: {
      "at-landmark": (at) => (at.landmark === "behind ear" ? landmark(at) : `біля ${landmarkIn(at, "near")}`),
      "behind-hairline": ({ behindMm, side }) =>
        side === "centre"
          ? `за ${t.mm(behindMm)} від лінії росту`
          : `${sides[side]}, за ${t.mm(behindMm)} від лінії росту`,
    },
    hairlinePoint: {
      behind: ({ behindMm, ...at }) => {
        if (behindMm === 0) return `на лінії росту, ${landmark(at)}`
        return behindMm < 0
          ? `${t.mm(-behindMm)} перед лінією росту, ${landmark(at)}`
          : `${t.mm(behindMm)} від лінії росту, ${landmark(at)}`
      },
      along: ({ alongMm }) => `${t.mm(alongMm)} уздовж від центру лоба`,
    },

    zones: {
      hairline: "лінія росту",
      top: "верх",
      left: "лівий бік",
      right: "правий бік",
      back: "потилиця",
    },
    strandParts: { roots: "корінь", midLengths: "довжина", ends: "кінці" },

    kinds: {
      slice: "слайс",
      weave: "штопка",
      backcomb: "начіс",
      painted: "мальована панель",
      "left-out": "залишене волосся",
    },
    carriers: { foil: "фольга", board: "планшет", "open-air": "відкрито", film: "плівка" },
    foilLies: {
      down: "звисає вниз",
      up: "укладена вгору",
      "toward-face": "до обличчя",
      "away-from-face": "від обличчя",
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
      "left-out": ({ name }) => name || "залишене волосся",
    },

    mix: (letter) => `суміш ${letter}`,
    coats: (coats) => {
      const [first, second = null] = coats.map((each) => coat(each))
      const afterMin = coats.at(-1)?.afterMin
      if (second === null) return first
      return afterMin === undefined
        ? `${first}, потім ${second}`
        : `${first}; через ${t.minutes(afterMin)} ${second}`
    },
    twoStrips: "Дві смуги в одній: угорі суміш на корені, унизу та, що на кінцях.",
    workingName,
    workingTitle: (code) => t.capital(say<WorkingNameCode>(workingName, code)),

    minute: ({ atMin, on, longestMin, waiting, off, piece }) =>
      [
        `Хвилина ${t.whole(atMin)}: ${pieces(t).count(on, piece)} на волоссі`,
        ...(on > 0 ? [`найдовше ${t.minutes(longestMin)}`] : []),
        `ще попереду ${t.whole(waiting)}`,
        `знято ${t.whole(off)}`,
      ].join(", "),

    figures: t,
    units: {
      mm: "мм",
      cm: "см",
      inches: "дюйм.",
      cm2: "см²",
      g: "г",
      min: "хв",
      percent: "%",
      degrees: "°",
      celsius: "°C",
      micrometres: "мкм",
      hairsPerCm2: "волосин на см²",
      vol: "vol",
      levels: "рівнів",
      years: "років",
      weeks: "тижнів",
    },
  }
}

const landmarkNames: readonly LandmarkName[] = [
  "centre front",
  "recession",
  "temple",
  "sideburn",
  "ear top",
  "behind ear",
  "nape corner",
  "centre nape",
]

/** A side of the head is called by its side first, every other area by it last. */
function workingArea(kind: WorkingKind, side: WorkingSide): string {
  if (side === "centre") return workingKinds[kind]
  if (kind === "side") return side === "left" ? "лівий бік" : "правий бік"
  return `${workingKinds[kind]} ${side === "left" ? "ліворуч" : "праворуч"}`
}

const workingKinds: Record<WorkingKind, string> = {
  triangle: "трикутник",
  frame: "рамка обличчя",
  front: "перед",
  top: "верх",
  side: "бік",
  crown: "маківка",
  behind: "верх і потилиця",
  around: "боки й потилиця",
  back: "потилиця",
}
