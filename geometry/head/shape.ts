import { add, cut, ellipsoid, type Field, paired, rod, sculpt } from "./fields"

/**
 * The unscaled head, mm in the head frame: the mean woman of the 1988 survey, soft and sexless, at rest.
 * Ellipsoids and rods with soft seams, mirror-symmetric. The skull was fitted to the survey's lengths and
 * tape arcs and to thirteen heads digitised with electrode caps; the face was modelled by eye on its landmarks.
 */
const skull = sculpt(
  ellipsoid([0, -8.9, 50.2], [61.9, 86.5, 73.1]),
  add(paired(ellipsoid([21.8, -18.4, 59.3], [46.7, 56.6, 47.8])), 23.6), // parietal bones
  add(ellipsoid([0, -43.6, 12.5], [46.2, 40.5, 55.5]), 29.7), // occipital bone
  add(ellipsoid([0, 38.2, 54.7], [53.5, 49.8, 45.9]), 28.7), // forehead
  add(paired(ellipsoid([37.3, -7.2, 1.6], [25.7, 35.5, 48.1])), 33), // about the ears
  add(paired(ellipsoid([31.7, 50.4, 20.6], [27.8, 36.3, 18.6])), 23.6), // brow bones, round to the temples
)

const face = sculpt(
  ellipsoid([0, 31.9, -18.7], [50.5, 44.9, 57.4]),
  add(paired(rod([34, 56.4, -11.1], 8.8, [52.7, 27.9, -3.8], 8.8)), 25.9), // cheekbones
  add(paired(ellipsoid([26, 35, -33], [24, 31, 31])), 22), // cheeks
  add(paired(rod([43.2, 2.9, -18], 9.2, [34.9, 9, -49.4], 7.8)), 23.7), // jaw, from the ear down
  add(paired(rod([34, 12, -54], 9, [9, 61, -80.5], 10)), 30), // jaw, to the chin
  add(ellipsoid([0, 69, -80], [14, 14, 13.5]), 20), // chin
  add(ellipsoid([0, 64, -44], [25, 24, 24]), 20), // mouth
)

const nose = sculpt(
  rod([0, 79.5, 22], 5, [0, 97, -15], 6), // bridge
  add(ellipsoid([0, 100.5, -18], [7.5, 7.5, 6.5]), 10), // tip
  add(paired(ellipsoid([9, 91, -22.5], [6.5, 8.5, 6])), 10), // wings
)

const neck = sculpt(
  rod([0, -13, -40], 44, [0, -33, -200], 45),
  add(ellipsoid([0, -42, -252], [100, 75, 64]), 70), // shoulders
)

/** Skull, face and neck in one smooth body, mm. */
export const headDistance: Field = sculpt(
  skull,
  add(face, 26),
  add(paired(rod([12.1, 79, 31.6], 2.4, [40.8, 70.2, 32.4], 2.2)), 23.8), // brows
  cut(paired(ellipsoid([30.5, 96, 10.5], [17.5, 16, 9.5])), 18), // eye sockets
  add(paired(ellipsoid([31, 66.5, 9], [14.5, 13.2, 11])), 9), // closed lids
  add(nose, 13),
  add(paired(rod([3, 85.8, -47.3], 3.9, [20, 77, -49.6], 1.6)), 4), // upper lip
  add(paired(rod([2, 85.6, -53.4], 4.6, [18, 77.2, -51.2], 1.6)), 4), // lower lip
  add(neck, 28),
)

/** One ear upright in its own frame: x outward, y forward, z up, mm. */
const uprightEar = sculpt(
  ellipsoid([0, 0, 3], [5, 14.5, 26.5]),
  add(ellipsoid([0, 3.5, -20], [4.2, 7.5, 9]), 8), // lobe
  cut(ellipsoid([5.5, 1.2, 4], [5, 9.5, 18.5]), 3.5), // bowl
)

const [backward, flare] = [0.22, 0.38]
const [sinBack, cosBack] = [Math.sin(backward), Math.cos(backward)]
const [sinFlare, cosFlare] = [Math.sin(flare), Math.cos(flare)]

/** Both ears, leaning back and flared from the head, mm; apart from the body, for hair does not grow on them. */
export function earDistance(x: number, y: number, z: number): number {
  const beside = Math.abs(x) - 69.5
  const forward = y + 12.5
  const up = z + 1.5
  const along = forward * cosBack + up * sinBack
  return uprightEar(
    beside * cosFlare + along * sinFlare,
    along * cosFlare - beside * sinFlare,
    up * cosBack - forward * sinBack,
  )
}
