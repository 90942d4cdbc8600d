import type { Stitching } from "../../../geometry/section/section"

/** The stitching of a section, without all else that it has. */
export const stitchingOf = ({ stitchMm, gapMm, dipMm }: Stitching): Stitching => ({ stitchMm, gapMm, dipMm })
