import type { Technique } from "../../../../presets/techniques/technique"
import { canDeflate } from "../../../core/file/deflate"
import { fragmentOf } from "../../../core/file/techniqueLink"

/** The address under which this Partline opens a technique; null when it would be too long, or this browser cannot make it. */
export async function addressOf(technique: Technique): Promise<string | null> {
  const fragment = canDeflate() ? await fragmentOf(technique) : null
  return fragment && `${location.origin}${location.pathname}${fragment}`
}
