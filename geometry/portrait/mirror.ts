import { type ViewPoint, viewPoint } from "../surface/frames"
import type { Vec3 } from "../surface/vec3"
import type { OrthographicView } from "../surface/views"
import type { HeadLine } from "./headLine"

const acrossMidline = ([x, y, z]: Vec3): Vec3 => [-x, y, z]
const acrossPage = ([x, y]: ViewPoint) => viewPoint(x === 0 ? 0 : -x, y)

/** The view from the same place on the other side: of a symmetric head it shows the mirror image of the page. */
export const mirroredView = ({ right: [x, y, z], up, toward }: OrthographicView): OrthographicView => ({
  kind: "orthographic",
  right: [x, -y, -z],
  up: acrossMidline(up),
  toward: acrossMidline(toward),
})

/** Whether the page shows a symmetric head symmetric about x = 0. */
export const isSymmetricView = ({ up, toward }: OrthographicView) =>
  Math.abs(up[0]) < 1e-9 && Math.abs(toward[0]) < 1e-9

export const mirroredLine = (line: HeadLine): HeadLine => ({ ...line, path: line.path.map(acrossPage) })

/** A drawing made symmetric: the part of each line at x >= 0 and its mirror image, joined where they meet. */
export const symmetricLines = (lines: readonly HeadLine[]): HeadLine[] =>
  lines.flatMap((line) =>
    rightStretches(line.path).flatMap((path) => {
      const image = path.map(acrossPage).reverse()
      if (path[0][0] === 0) return [{ ...line, path: [...image, ...path.slice(1)] }]
      if (image[0][0] === 0) return [{ ...line, path: [...path, ...image.slice(1)] }]
      return [
        { ...line, path },
        { ...line, path: image },
      ]
    }),
  )

/** The stretches of a path at x >= 0, cut where it crosses x = 0. */
function rightStretches(path: readonly ViewPoint[]): ViewPoint[][] {
  const stretches: ViewPoint[][] = []
  let stretch: ViewPoint[] = []
  path.forEach((point, i) => {
    const before = path[i - 1]
    if (before && before[0] < 0 !== point[0] < 0) stretch.push(onMidline(before, point))
    if (point[0] >= 0) stretch.push(point)
    const isLeaving = point[0] < 0 || i === path.length - 1
    if (!isLeaving) return
    if (stretch.length > 1) stretches.push(stretch)
    stretch = []
  })
  return stretches
}

const onMidline = ([ax, ay]: ViewPoint, [bx, by]: ViewPoint) =>
  viewPoint(0, ay + ((by - ay) * ax) / (ax - bx))
