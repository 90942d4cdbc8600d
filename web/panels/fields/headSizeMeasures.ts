import type { HeadSize } from "../../../geometry/scalp/headSize"
import type { headMeasureSources } from "../../../presets/client/headSizes"

/** One measure of a head: what it is called, how it is taken, what it reads and the size with another reading. */
export type HeadMeasure = {
  key: keyof typeof headMeasureSources
  name: string
  hint: string
  mm: number
  resized(mm: number): HeadSize
}

/** The three measures of a head, by tape over the hair or by caliper on the skin. */
export function measuresOf(size: HeadSize): readonly HeadMeasure[] {
  if (size.kind === "tape")
    return [
      {
        key: "aroundMm",
        name: "Around",
        hint: "over the brows and round the back",
        mm: size.aroundMm,
        resized: (aroundMm) => ({ ...size, aroundMm }),
      },
      {
        key: "overMm",
        name: "Over the top",
        hint: "from the front of one ear hole to the other",
        mm: size.overMm,
        resized: (overMm) => ({ ...size, overMm }),
      },
      {
        key: "frontToNapeMm",
        name: "Front to nape",
        hint: "from the front hairline to the hollow of the nape",
        mm: size.frontToNapeMm,
        resized: (frontToNapeMm) => ({ ...size, frontToNapeMm }),
      },
    ]
  return [
    {
      key: "lengthMm",
      name: "Length",
      hint: "from between the brows to the back of the head",
      mm: size.lengthMm,
      resized: (lengthMm) => ({ ...size, lengthMm }),
    },
    {
      key: "breadthMm",
      name: "Breadth",
      hint: "where it is widest, above the ears",
      mm: size.breadthMm,
      resized: (breadthMm) => ({ ...size, breadthMm }),
    },
    {
      key: "heightMm",
      name: "Height",
      hint: "from the ear hole to the top, upright",
      mm: size.heightMm,
      resized: (heightMm) => ({ ...size, heightMm }),
    },
  ]
}
