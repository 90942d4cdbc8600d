import type { BodyPart } from "./headMesh"
import type { Raster } from "./raster"
import type { SeenMesh } from "./seenMesh"

/** A grey wash for one view: how dark each pixel is, 0 to 255; `left` and `top` are page mm of its edges. */
export type Shade = {
  width: number
  height: number
  mmPerPixel: number
  left: number
  top: number
  alpha: Uint8ClampedArray
}

/** The wash leaves the paper bare this near to its edge, mm, so that it never shows past a line. */
const bareEdgeMm = 3.5
const softMm = 1.5

/** One array a part, overwritten at the next look, as in seenMesh. */
const lent = new WeakMap<BodyPart["washes"], Float64Array>()

/** How dark each point of a part is, 0 to 1: soft light from above the viewer, less in hollows, none where the neck ends. */
export function tonesOf({ washes }: BodyPart, { outX, outY, facing }: SeenMesh): Float64Array {
  const tones = lent.get(washes) ?? new Float64Array(facing.length)
  lent.set(washes, tones)
  for (let i = 0; i < tones.length; i++) {
    tones[i] = 0
    if (facing[i] <= 0) continue
    const size = Math.sqrt(outX[i] * outX[i] + outY[i] * outY[i] + facing[i] * facing[i])
    const light = (0.55 * outY[i] + 0.83 * facing[i]) / size
    const { hollow, strength } = washes
    tones[i] = strength[i] * (0.3 * (1 - light) + 0.34 * hollow[i])
  }
  return tones
}

/** The wash of a drawn page. */
export function shadeOf({ depth, tone, ...page }: Raster): Shade {
  const { width, height, mmPerPixel } = page
  const blurred = (values: Float32Array, mm: number) => {
    const reach = Math.max(1, Math.round(mm / mmPerPixel))
    return blurAlong(blurAlong(values, reach, 1, width), reach, width, height)
  }
  const share = blurred(
    depth.map((d) => (d > Number.NEGATIVE_INFINITY ? 1 : 0)),
    bareEdgeMm,
  )
  const soft = blurred(tone, softMm)
  const alpha = new Uint8ClampedArray(width * height)
  for (let i = 0; i < alpha.length; i++) {
    const inside = Math.min(1, Math.max(0, share[i] * 2 - 1))
    alpha[i] = 255 * soft[i] * inside * (2 - inside)
  }
  return { ...page, alpha }
}

/** Running means of 2 * reach + 1 pixels, along rows (stride 1) or columns (stride = width). */
function blurAlong(values: Float32Array, reach: number, stride: number, count: number): Float32Array {
  const blurred = new Float32Array(values.length)
  const lines = values.length / count
  const share = 1 / (2 * reach + 1)
  for (let line = 0; line < lines; line++) {
    const start = stride === 1 ? line * count : line
    let sum = 0
    for (let i = -reach; i < count; i++) {
      if (i + reach < count) sum += values[start + (i + reach) * stride]
      if (i - reach - 1 >= 0) sum -= values[start + (i - reach - 1) * stride]
      if (i >= 0) blurred[start + i * stride] = sum * share
    }
  }
  return blurred
}
