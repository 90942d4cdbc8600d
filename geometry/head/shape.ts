/**
 * The unscaled head as signed distance fields, mm in the head frame; negative inside. Mirror-symmetric.
 * `headDistance` is skull, face and neck in one smooth body; `earDistance` is one ear, apart from the scalp.
 */
const cm = 10

type Triple = readonly [number, number, number]

const ellipsoid = (x: number, y: number, z: number, [cx, cy, cz]: Triple, [a, b, c]: Triple) => {
  const u = (x - cx) / a
  const v = (y - cy) / b
  const w = (z - cz) / c
  const unit = Math.sqrt(u * u + v * v + w * w)
  if (unit < 1e-9) return -Math.min(a, b, c)
  return (unit * (unit - 1)) / Math.sqrt((u / a) ** 2 + (v / b) ** 2 + (w / c) ** 2)
}

const capsule = (x: number, y: number, z: number, p: Triple, q: Triple, atP: number, atQ: number) => {
  const [dx, dy, dz] = [q[0] - p[0], q[1] - p[1], q[2] - p[2]]
  const [ex, ey, ez] = [x - p[0], y - p[1], z - p[2]]
  const t = Math.min(1, Math.max(0, (ex * dx + ey * dy + ez * dz) / (dx * dx + dy * dy + dz * dz)))
  return Math.sqrt((ex - dx * t) ** 2 + (ey - dy * t) ** 2 + (ez - dz * t) ** 2) - (atP + (atQ - atP) * t)
}

const blend = (a: number, b: number, reach: number) => {
  const overlap = Math.max(reach - Math.abs(a - b), 0) / reach
  return Math.min(a, b) - overlap * overlap * reach * 0.25
}
const carve = (a: number, b: number, reach: number) => -blend(-a, b, reach)

export function headDistance(xMm: number, yMm: number, zMm: number): number {
  const x = Math.abs(xMm) / cm
  const y = yMm / cm
  const z = zMm / cm
  let d = ellipsoid(x, y, z, [0, -0.365, 4.429], [6.415, 9.239, 8.209]) // cranium
  d = blend(d, ellipsoid(x, y, z, [2.363, -1.306, 4.576], [4.441, 5.45, 5.407]), 2.4) // parietal
  d = blend(d, ellipsoid(x, y, z, [0, -4.52, 1.787], [4.916, 4.374, 4.688]), 2.8) // occiput
  d = blend(d, ellipsoid(x, y, z, [0, 4.198, 3.457], [6.368, 4.212, 4.851]), 2.4) // forehead
  d = blend(d, ellipsoid(x, y, z, [3.6, -0.4, -0.6], [2.73, 3.2, 4.6]), 2.6) // around the ear
  let f = ellipsoid(x, y, z, [0, 3.4, -2.6], [5.3, 4.9, 6.6]) // face
  f = blend(f, capsule(x, y, z, [3.9, 5.2, -1.6], [5.7, 2.6, -0.6], 1.25, 0.95), 2.2) // cheekbone
  f = blend(f, capsule(x, y, z, [4.2, 1.6, -5.0], [1.0, 6.3, -8.1], 0.8, 1.0), 3.4) // jaw
  f = blend(f, ellipsoid(x, y, z, [0, 7.05, -8.1], [1.5, 1.25, 1.25]), 1.8) // chin
  f = blend(f, ellipsoid(x, y, z, [0, 7.0, -4.9], [2.3, 1.9, 2.1]), 1.6) // mouth
  d = blend(d, f, 2.4)
  d = blend(d, capsule(x, y, z, [0.8, 8.45, 3.0], [4.0, 7.2, 3.1], 0.35, 0.2), 1.8) // brow
  d = carve(d, ellipsoid(x, y, z, [3.0, 9.7, 0.9], [1.9, 1.7, 1.0]), 1.9) // eye socket
  d = blend(d, ellipsoid(x, y, z, [3.05, 6.7, 0.55], [1.45, 1.3, 0.9]), 0.9) // closed lid
  d = blend(d, capsule(x, y, z, [0, 8.5, 2.0], [0, 10.0, -1.9], 0.38, 0.6), 1.3) // nose
  d = blend(d, ellipsoid(x, y, z, [0.78, 8.95, -2.35], [0.6, 0.85, 0.5]), 0.6) // nostril
  d = blend(d, ellipsoid(x, y, z, [0.62, 8.42, -4.45], [1.15, 0.62, 0.34]), 0.35) // upper lip
  d = blend(d, ellipsoid(x, y, z, [0, 8.4, -5.15], [1.45, 0.66, 0.42]), 0.35) // lower lip
  return cm * blend(d, capsule(x, y, z, [0, -1.6, -4.5], [0, -3.2, -18], 4.35, 4.7), 3.4) // neck
}

export function earDistance(xMm: number, yMm: number, zMm: number): number {
  const [sinBack, cosBack, sinFlare, cosFlare] = [
    Math.sin(0.22),
    Math.cos(0.22),
    Math.sin(0.38),
    Math.cos(0.38),
  ]
  const beside = Math.abs(xMm) / cm - 6.95
  const forward = yMm / cm + 1.25
  const up = zMm / cm + 0.15
  const turned = forward * cosBack + up * sinBack
  const z = -forward * sinBack + up * cosBack
  const x = beside * cosFlare + turned * sinFlare
  const y = -beside * sinFlare + turned * cosFlare
  let d = ellipsoid(x, y, z, [0, 0, 0.3], [0.5, 1.45, 2.65])
  d = blend(d, ellipsoid(x, y, z, [0, 0.35, -2.0], [0.42, 0.75, 0.9]), 0.8)
  return cm * carve(d, ellipsoid(x, y, z, [0.55, 0.12, 0.4], [0.5, 0.95, 1.85]), 0.35)
}

/** Length, breadth and tragion-to-top height of the unscaled shape as a caliper reads them, mm. */
export const unscaledCaliper = { lengthMm: 191.9, breadthMm: 144.5, heightMm: 126.4 }
