import { leftOutDepthMm } from "../../../presets/plans/startingPlan"
import type { KindRecord } from "./kindRecord"

export const leftOut = {
  make: (band, _, next) => ({ kind: "left-out", ...band, name: next.leftOutName }),
  depthMm: leftOutDepthMm.value,
  fields: [],
  traits: null,
} satisfies KindRecord<"left-out">
