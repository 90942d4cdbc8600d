import type { HeadSize } from "../../../../geometry/scalp/headSize"
import type { headMeasureSources } from "../../../../presets/client/headSizes"

/** One measure of a head: what it reads and the size with another reading. */
export type HeadMeasure = {
  key: keyof typeof headMeasureSources
  mm: number
  resized(mm: number): HeadSize
}

/** The three measures of a head, by tape over the hair or by caliper on the skin. */
export function measuresOf(size: HeadSize): readonly HeadMeasure[] {
  if (size.kind === "tape")
    return [
      {
        key: "aroundMm",
        mm: size.aroundMm,
        resized: (aroundMm) => ({ ...size, aroundMm }),
      },
      {
        key: "overMm",
        mm: size.overMm,
        resized: (overMm) => ({ ...size, overMm }),
      },
      {
        key: "frontToNapeMm",
        mm: size.frontToNapeMm,
        resized: (frontToNapeMm) => ({ ...size, frontToNapeMm }),
      },
    ]
  return [
    {
      key: "lengthMm",
      mm: size.lengthMm,
      resized: (lengthMm) => ({ ...size, lengthMm }),
    },
    {
      key: "breadthMm",
      mm: size.breadthMm,
      resized: (breadthMm) => ({ ...size, breadthMm }),
    },
    {
      key: "heightMm",
      mm: size.heightMm,
      resized: (heightMm) => ({ ...size, heightMm }),
    },
  ]
}
