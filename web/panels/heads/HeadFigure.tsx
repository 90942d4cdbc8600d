import "./heads.css"
import { memo, type ReactNode } from "react"
import type { HeadLine } from "../../../geometry/portrait/headLine"
import type { ViewPoint } from "../../../geometry/surface/frames"
import type { PaperView, Picture } from "../../drawing/headDrawing"
import { type Ink, inks } from "../../drawing/inks"
import { viewFrame } from "../../drawing/labelRings"
import type { Mark } from "../../drawing/mark"
import { hairlineMarks } from "../../drawing/marks"
import { pathData } from "../fields/pathData"

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
