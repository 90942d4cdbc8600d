import type { Rgb } from "../../../presets/pigment/melanin"
import { colourOf, type HairShade } from "./hairColour"

/** A shade as the screen takes it, "#rrggbb". */
export const hexOf = (shade: HairShade) =>
  `#${screenBytes(colourOf(shade))
    .map((byte) => byte.toString(16).padStart(2, "0"))
    .join("")}`

/** Linear light as sRGB, 0 to 255 (IEC 61966-2-1). */
export const screenBytes = (linear: Rgb) =>
  linear.map((light) => {
    const within = Math.min(1, Math.max(0, light))
    return Math.round(255 * (within <= 0.0031308 ? 12.92 * within : 1.055 * within ** (1 / 2.4) - 0.055))
  })
