import { type HeadPoint, mirrored, type SurfacePoint } from "../surface/frames"
import { mapDirections, type Surface } from "../surface/surface"
import { subtract, type Vec3 } from "../surface/vec3"
import { headMapFrame } from "./headSurface"

/**
 * The places of anatomy that tapes and calipers are put to, mm in the head frame of the unscaled head, on its right.
 * Those without a source are where this head is widest, highest, rearmost.
 */
const places = {
  glabella: [0, 90.6, 35.2], // level: 1988 headboard survey, TR-89/044
  crinion: [0, 82, 83.5], // front hairline in the middle: the same survey, 52 mm above the glabella
  vertex: [0, -9.8, 123.7],
  opisthocranion: [0, -96.7, 42.9],
  inion: [0, -81.6, -12],
  nape: [0, -61.2, -69], // hollow of the nape, where a tape ends: a centimetre under the hairline, 57 mm under the inion; an assumption
  euryon: [72.2, -14.2, 52],
  tragion: [68, 0, 0], // the notch in front of the ear hole: the frame's origin lies between the two
  earTop: [69, -8, 28.7], // level: "ear length above tragion" of the 1988 survey; depth an assumption
} satisfies Record<string, Vec3>

export type Landmark = keyof typeof places

const { inverse } = mapDirections(headMapFrame.poleTilt)

/** The landmark on the scalp map, on the head's right; the left is its mirror image. The same on every head. */
export const landmark = (name: Landmark): SurfacePoint => inverse(subtract(places[name], headMapFrame.centre))

/** The landmark on a head's skin, mm in the head frame. */
export const landmarkOn = (surface: Surface, name: Landmark): HeadPoint => surface.pointAt(landmark(name))

/** The same landmark on the head's left. */
export const leftLandmarkOn = (surface: Surface, name: Landmark): HeadPoint =>
  surface.pointAt(mirrored(landmark(name)))
