import type { Pair } from "../../../geometry/surface/frames"
import { mmPerPt, type Path } from "./page"

/** The words of a PDF for what is drawn (ISO 32000-1, 8.4 to 8.5), to a thousandth of a point, y up from a height in mm. */
export const short = (value: number) => String(Math.round(value * 1000) / 1000)

export const point = ([x, y]: Pair, fromMm = 0) => `${short(x / mmPerPt)} ${short((fromMm - y) / mmPerPt)}`

export function traced(path: Path, fromMm = 0): string {
  const [first, ...rest] = path
  return [`${point(first, fromMm)} m`, ...rest.map((at) => `${point(at, fromMm)} l`)].join(" ")
}

export const fillInk = (ink: string) => `${color(ink)} rg`

type Stroke = { weightPt: number; dashPt: readonly number[] }

export const strokeInk = (ink: string, { weightPt, dashPt }: Stroke) =>
  `${color(ink)} RG ${short(weightPt)} w [${dashPt.map(short).join(" ")}] 0 d`

const color = (ink: string) =>
  [1, 3, 5].map((at) => short(Number.parseInt(ink.slice(at, at + 2), 16) / 255)).join(" ")
