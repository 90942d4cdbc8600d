import type { Section } from "../../../geometry/section/section"
import { viewPoint } from "../../../geometry/surface/frames"
import type { FlatBand } from "../../drawing/flatBand"
import { sectionMarks } from "../../drawing/sectionMarks"
import type { Item } from "../pens/page"
import { markItems } from "./viewItems"

const stations = 33
const layers = 3

/** A section as the map draws it, laid out straight: `width` by `height` mm of paper at the views' scale. */
export function swatch(
  section: Section,
  mix: number,
  [width, height]: readonly [number, number],
  scale: number,
): Item[] {
  const flat = straightBand(width / scale, height / scale)
  const { tones, lines } = markItems(sectionMarks(section, flat, mix), ([x, y]) => [x * scale, -y * scale])
  return [...tones, ...lines]
}

/** A band that lies flat along x, its parting on top, mm at life size. */
function straightBand(lengthMm: number, depthMm: number): FlatBand {
  const along = Float64Array.from({ length: stations }, (_, i) => (lengthMm * i) / (stations - 1))
  const xy = new Float64Array(stations * layers * 2)
  for (let station = 0; station < stations; station++)
    for (let layer = 0; layer < layers; layer++) {
      const [x, y] = viewPoint(along[station], (-depthMm * layer) / (layers - 1))
      xy.set([x, y], 2 * (station * layers + layer))
    }
  return {
    shape: {
      stations,
      layers,
      points: new Float64Array(stations * layers * 3),
      normals: new Float64Array(stations * layers * 3),
      alongMm: along,
      depthMm: new Float64Array(stations).fill(depthMm),
    },
    xy,
    visible: new Uint8Array(stations).fill(1),
  }
}
