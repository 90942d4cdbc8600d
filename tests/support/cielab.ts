export type Lab = readonly [lightness: number, a: number, b: number]

/** CIELAB of linear sRGB light under D65 (IEC 61966-2-1, CIE 15). */
export function labOf([red, green, blue]: readonly number[]): Lab {
  const bend = (t: number) => (t > 216 / 24389 ? Math.cbrt(t) : ((24389 / 27) * t + 16) / 116)
  const x = bend((0.4124 * red + 0.3576 * green + 0.1805 * blue) / 0.9505)
  const y = bend(0.2126 * red + 0.7152 * green + 0.0722 * blue)
  const z = bend((0.0193 * red + 0.1192 * green + 0.9505 * blue) / 1.089)
  return [116 * y - 16, 500 * (x - y), 200 * (y - z)]
}

export const chromaOf = ([, a, b]: Lab) => Math.hypot(a, b)
/** Degrees: 0 is red, 90 yellow. */
export const hueOf = ([, a, b]: Lab) => (degrees(Math.atan2(b, a)) + 360) % 360

/** CIEDE2000 (Sharma, Wu, Dalal 2005, "The CIEDE2000 color-difference formula: implementation notes"). */
export function ciede2000(one: Lab, two: Lab): number {
  const mean7 = ((chromaOf(one) + chromaOf(two)) / 2) ** 7
  const grow = 1.5 - 0.5 * Math.sqrt(mean7 / (mean7 + 25 ** 7))
  const [from, to] = [one, two].map(([l, a, b]): Lab => [l, a * grow, b])
  const [c1, c2] = [chromaOf(from), chromaOf(to)]
  const [h1, h2] = [hueOf(from), hueOf(to)]
  const isGrey = c1 * c2 === 0
  const apart = isGrey ? 0 : ((h2 - h1 + 540) % 360) - 180
  const lightness = to[0] - from[0]
  const hue = 2 * Math.sqrt(c1 * c2) * Math.sin(radians(apart / 2))
  const meanL = (from[0] + to[0]) / 2 - 50
  const meanC = (c1 + c2) / 2
  const meanH = isGrey ? h1 + h2 : Math.abs(h1 - h2) <= 180 ? (h1 + h2) / 2 : (h1 + h2 + 360) / 2
  const cosine = (times: number, less: number) => Math.cos(radians(times * meanH - less))
  const turn = 1 - 0.17 * cosine(1, 30) + 0.24 * cosine(2, 0) + 0.32 * cosine(3, -6) - 0.2 * cosine(4, 63)
  const overL = lightness / (1 + (0.015 * meanL ** 2) / Math.sqrt(20 + meanL ** 2))
  const overC = (c2 - c1) / (1 + 0.045 * meanC)
  const overH = hue / (1 + 0.015 * meanC * turn)
  const blue = 60 * Math.exp(-(((meanH - 275) / 25) ** 2))
  const cross = -2 * Math.sqrt(meanC ** 7 / (meanC ** 7 + 25 ** 7)) * Math.sin(radians(blue))
  return Math.sqrt(overL ** 2 + overC ** 2 + overH ** 2 + cross * overC * overH)
}

const degrees = (angle: number) => (angle * 180) / Math.PI
const radians = (angle: number) => (angle * Math.PI) / 180
