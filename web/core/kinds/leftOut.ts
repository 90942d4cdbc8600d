import { leftOutDepthMm } from "../../../presets/plans/startingPlan"
import type { KindRecord } from "./kindRecord"

export const leftOut = {
  make: (band, _, next) => ({ kind: "left-out", ...band, name: next.leftOutName }),
  values: () => ({}),
  take: (section) => section,
  depthMm: leftOutDepthMm.value,
  isDepthWorded: false,
  depthLabel: "depth",
  key: "l",
  fields: [],
  traits: null,
} satisfies KindRecord<"left-out">
