import { add, cut, ellipsoid, type Field, paired, rod, sculpt } from "./fields"

/**
 * The unscaled head, mm in the head frame: the mean woman of the 1988 survey, soft and sexless, at rest.
 * Ellipsoids and rods with soft seams, mirror-symmetric. The skull was fitted to the survey's lengths and
 * tape arcs and to thirteen heads digitised with electrode caps; the face was modelled by eye on its landmarks.
 */
const skull = sculpt(
  ellipsoid([0, -9, 50], [60.5, 86.5, 73.5]),
  add(paired(ellipsoid([22.5, -17.5, 59.5], [47, 56.5, 47])), 24), // parietal bones
  add(ellipsoid([0, -43.5, 13.5], [46.5, 41, 50.5]), 30), // occipital bone
  add(ellipsoid([0, 36.5, 56.5], [51.5, 51.5, 44.5]), 30), // forehead
  add(paired(ellipsoid([37.5, -7, 1.5], [24, 35, 46.5])), 33), // about the ears
  add(paired(ellipsoid([28, 48.5, 24.5], [27.5, 39.5, 25])), 26), // brow bones, round to the temples
)

const face = sculpt(
  ellipsoid([0, 30.5, -19], [49.5, 43.5, 57]),
  add(paired(rod([34, 56, -11.5], 8, [55, 20, -3], 9.5)), 26), // cheekbones
  add(paired(ellipsoid([26, 35, -33], [24, 31, 31])), 22), // cheeks
  add(paired(rod([43, 3, -18.5], 9, [33.5, 9, -49], 6.5)), 23), // jaw, from the ear down
  add(paired(rod([34, 12, -54], 9, [13, 59.5, -80], 10)), 30), // jaw, to the chin
  add(ellipsoid([0, 69, -80], [15, 14, 13.5]), 20), // chin
  add(ellipsoid([0, 64, -44], [25, 24, 24]), 20), // mouth
)

const nose = sculpt(
  rod([0, 79.5, 22], 5, [0, 97, -15], 6), // bridge
  add(rod([0, 72, 14], 6, [0, 85, -17], 9.5), 8), // its root in the face
  add(ellipsoid([0, 100.5, -18], [7.5, 7.5, 6.5]), 10), // tip
  add(paired(ellipsoid([9, 91, -22.5], [6.5, 8.5, 6])), 10), // wings
)

const neck = sculpt(
  rod([0, -13, -40], 44, [0, -33, -200], 45),
  add(ellipsoid([0, -42, -252], [100, 75, 64]), 70), // shoulders
)

/** Skull, face and neck in one smooth body, mm. The ears are a body of their own: no hair grows on them. */
export const headDistance: Field = sculpt(
  skull,
  add(face, 26),
  add(paired(rod([13, 77, 31], 2, [40, 69, 32.8], 2)), 24), // brows
  cut(paired(rod([18, 96.5, 9.7], 9.5, [45, 91, 12], 11.5)), 18), // eye sockets
  add(paired(ellipsoid([31, 66.5, 9], [15, 13, 11])), 12), // closed lids
  add(nose, 13),
  add(paired(rod([4, 85.3, -47.3], 3.7, [20, 77.2, -49.8], 1.6)), 4), // upper lip
  add(paired(rod([4, 85, -53.2], 4.2, [18.5, 77.4, -52], 1.6)), 4), // lower lip
  add(neck, 28),
)
