import { densityAt, hairsRange } from "../../../geometry/hair/hair"
import type { Range } from "../../../geometry/hair/tradeFigures"
import type { Head } from "../../../geometry/scalp/head"
import { mapReach } from "../../../geometry/scalp/headSurface"
import { surfacePoint } from "../../../geometry/surface/frames"
import { cross, length } from "../../../geometry/surface/vec3"
import { tradeFigures } from "../../../presets/formula/tradeFigures"
import type { Plan } from "../document/schema"

/** The scalp inside the hairline, and how many hairs may grow on it. */
export type WholeHead = { areaCm2: number; hairs: Range }

/** Sums over square cells of the scalp map, `step` radians wide: about 5 mm. */
export function wholeHead(head: Head, hair: Plan["hair"], step = 0.06): WholeHead {
  const cells = 2 * Math.floor(mapReach / step)
  let areaCm2 = 0
  let hairs = 0
  for (let cell = 0; cell < cells * cells; cell++) {
    const at = surfacePoint(
      ((cell % cells) + 0.5 - cells / 2) * step,
      (Math.floor(cell / cells) + 0.5 - cells / 2) * step,
    )
    if (!head.hairline.contains(at)) continue
    const cellCm2 = (step * step * length(cross(...head.surface.tangentsAt(at)))) / 100
    areaCm2 += cellCm2
    hairs += cellCm2 * densityAt(head, hair, tradeFigures, head.surface.pointAt(at))
  }
  return { areaCm2, hairs: hairsRange(hairs, tradeFigures) }
}
