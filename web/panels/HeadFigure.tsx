import { memo, type ReactNode } from "react"
import type { ViewPoint } from "../../geometry/frames"
import type { HeadLine } from "../../geometry/head/headLine"
import type { PaperView, Picture } from "../plan/headDrawing"
import { type Ink, inks } from "../plan/inks"
import { viewFrame } from "../plan/labelRings"
import type { Mark } from "../plan/mark"
import { hairlineMarks } from "../plan/marks"
import { pathData } from "./pathData"

/** Points of the page to pixels, with a finer pen than the map's: the figures are small. */
const pxPerPt = (0.7 * 96) / 72

type Props = { name: PaperView; picture: Picture; children: ReactNode }

/** A still picture of the head in one view; what is drawn on it is in mm of the view, y down. */
export function HeadFigure({ name, picture, children }: Props) {
  const [left, bottom, right, top] = viewFrame(name, picture.scene.head.axes)
  return (
    <svg
      className="head-figure"
      viewBox={`${left} ${-top} ${right - left} ${top - bottom}`}
      aria-hidden="true"
    >
      <HeadLines picture={picture} />
      {children}
    </svg>
  )
}

const lineInks: Record<HeadLine["weight"], Ink> = {
  bold: inks["head-bold"],
  medium: inks["head-medium"],
  fine: inks["head-fine"],
}

const HeadLines = memo(({ picture }: { picture: Picture }) => (
  <>
    {(Object.keys(lineInks) as HeadLine["weight"][]).map((weight) => (
      <InkPath
        key={weight}
        paths={picture.lines.filter((line) => line.weight === weight).map(({ path }) => path)}
        ink={lineInks[weight]}
      />
    ))}
    <InkPath paths={hairlineMarks(picture.scene).flatMap(pathOf)} ink={inks.hairline} />
  </>
))

const pathOf = (mark: Mark) => (mark.kind === "line" ? [mark.path] : [])

const InkPath = ({ paths, ink }: { paths: readonly (readonly ViewPoint[])[]; ink: Ink }) => (
  <path
    d={paths.map(pathData).join("")}
    fill="none"
    stroke={ink.color}
    strokeWidth={ink.weightPt * pxPerPt}
    strokeDasharray={ink.dashPt?.join(" ")}
    strokeLinecap="round"
    vectorEffect="non-scaling-stroke"
  />
)
