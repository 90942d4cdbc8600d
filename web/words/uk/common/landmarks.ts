import type { LandmarkName } from "../../../../geometry/scalp/hairlineLandmarks"
import type { LandmarkCode } from "../../../core/placement/places"

/** A landmark by the case that its sentence asks for: what it is called, and after "біля", "від", "до". */
type Case = "named" | "near"

const middle: Record<LandmarkName, Record<Case, string>> = {
  "centre front": { named: "центр лоба", near: "центру лоба" },
  recession: { named: "скронева виїмка", near: "скроневої виїмки" },
  temple: { named: "скроня", near: "скроні" },
  sideburn: { named: "бакенбарда", near: "бакенбарди" },
  "ear top": { named: "верх вуха", near: "верху вуха" },
  "behind ear": { named: "за вухом", near: "місця за вухом" },
  "nape corner": { named: "кут карка", near: "кута карка" },
  "centre nape": { named: "центр карка", near: "центру карка" },
}

type Sided = Record<"left" | "right", Record<Case, string>>
const sided: Partial<Record<LandmarkName, Sided>> = {
  recession: {
    left: { named: "ліва виїмка", near: "лівої виїмки" },
    right: { named: "права виїмка", near: "правої виїмки" },
  },
  temple: {
    left: { named: "ліва скроня", near: "лівої скроні" },
    right: { named: "права скроня", near: "правої скроні" },
  },
  sideburn: {
    left: { named: "ліва бакенбарда", near: "лівої бакенбарди" },
    right: { named: "права бакенбарда", near: "правої бакенбарди" },
  },
  "ear top": {
    left: { named: "верх лівого вуха", near: "верху лівого вуха" },
    right: { named: "верх правого вуха", near: "верху правого вуха" },
  },
  "behind ear": {
    left: { named: "за лівим вухом", near: "місця за лівим вухом" },
    right: { named: "за правим вухом", near: "місця за правим вухом" },
  },
  "nape corner": {
    left: { named: "лівий кут карка", near: "лівого кута карка" },
    right: { named: "правий кут карка", near: "правого кута карка" },
  },
}

/** A landmark of no side. */
export const landmarkName = (name: LandmarkName, as: Case) => middle[name][as]

/** A landmark of one side, such as "ліва скроня"; what lies in the middle is told with the side after it. */
export const landmarkIn = ({ landmark, side }: LandmarkCode, as: Case) => {
  if (side === "centre") return middle[landmark][as]
  return sided[landmark]?.[side][as] ?? `${middle[landmark][as]}, ${side === "left" ? "ліворуч" : "праворуч"}`
}
