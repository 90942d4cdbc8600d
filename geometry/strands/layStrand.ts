import type { Head } from "../scalp/head"
import { smoothStep } from "../surface/smoothStep"
import type { Vec3 } from "../surface/vec3"
import type { Feel } from "./feel"
import { hashRandom } from "./hashRandom"
import type { Body } from "./headDistance"
import type { StrandFigures } from "./strandFigures"

/**
 * How a strand starts: its root and the way out of the scalp there, how it is combed, where it is led to before it hangs
 * free, its length, the lots of its lock and its own.
 */
export type Start = {
  root: Vec3
  outward: Vec3
  combed: Vec3
  gathered: Vec3 | null
  lengthMm: number
  lot: number
  own: number
}
export type Lying = { head: Pick<Head, "axes">; body: Body; figures: StrandFigures }

/** No strand comes nearer to the scalp than this, mm. */
const skinMm = 0.6
const passes = 2

type Moving = { x: number; y: number; z: number }

/**
 * Lays one strand from its root at even steps into `points` (x, y, z by turns, mm): along the combed direction, turning
 * down as it bends, never nearer to the head than its layer.
 */
export function layStrand(start: Start, { head, body, figures }: Lying, points: Float32Array) {
  const steps = points.length / 3 - 1
  const stepMm = start.lengthMm / steps
  const at = moving(start.root)
  const way = leaving(start, figures.liftRadians)
  const pull = moving([0, 0, -1])
  const feel: Feel = { mm: 0, x: 0, y: 0, z: 1 }
  const side = Math.sign(start.combed[0]) || 1
  const layer =
    layerOf(start.root[2] / head.axes[2], figures) *
    (0.8 + 0.3 * hashRandom(start.lot, 7) + 0.1 * hashRandom(start.own, 7))
  body.feelEar(at.x, at.y, at.z, feel)
  const earAtRootMm = Math.min(0, feel.mm)
  put(points, 0, at)
  let led = start.gathered
  const bendMm = led ? ledBendMm : figures.bendMm
  let onShoulders = 0
  for (let i = 1; i <= steps; i++) {
    led = led && pullTo(led, at, way, pull) ? led : null
    if (!led) pullAt(at, head.axes, { side, onShoulders }, pull)
    bend(way, pull, Math.exp(-stepMm / bendMm))
    stray(way, start, i * stepMm, figures.stray)
    const full = Math.min(1, (i * stepMm) / figures.layerMm.fullAfterMm)
    const last: Keeping = { x: at.x, y: at.y, z: at.z, stepMm, way }
    step(at, way, stepMm)
    for (let pass = 0; pass < passes; pass++) {
      body.feelEar(at.x, at.y, at.z, feel)
      lift(at, feel, earAtRootMm * (1 - full) + layer * full, last)
      body.feel(at.x, at.y, at.z, feel)
      lift(at, feel, skinMm + layer * full, last)
      body.feelBust(at.x, at.y, at.z, feel)
      onShoulders = smoothStep(nearShouldersMm, skinMm + layer, feel.mm)
      lift(at, feel, skinMm + layer, last)
    }
    put(points, i, at)
  }
}

const moving = ([x, y, z]: Vec3): Moving => ({ x, y, z })

const put = (points: Float32Array, i: number, { x, y, z }: Moving) => {
  points[3 * i] = x
  points[3 * i + 1] = y
  points[3 * i + 2] = z
}

function leaving({ combed, outward }: Start, lift: number): Moving {
  const [along, out] = [Math.cos(lift), Math.sin(lift)]
  return {
    x: combed[0] * along + outward[0] * out,
    y: combed[1] * along + outward[1] * out,
    z: combed[2] * along + outward[2] * out,
  }
}

/** The higher a root, the more hair it lies on, mm. */
const layerOf = (rootZ: number, { layerMm: { lowest, highest } }: StrandFigures) =>
  lowest + (highest - lowest) * smoothStep(-50, 125, rootZ)

/** Hair that is led somewhere turns to it, and down from there, over this length; so near it is there, mm. */
const ledBendMm = 14
const thereMm = 9

/** Toward a place, until it is reached or passed. */
function pullTo(place: Vec3, at: Moving, way: Moving, pull: Moving): boolean {
  pull.x = place[0] - at.x
  pull.y = place[1] - at.y
  pull.z = place[2] - at.z
  const mm = Math.sqrt(pull.x * pull.x + pull.y * pull.y + pull.z * pull.z)
  normalizeInPlace(pull)
  const along = way.x * pull.x + way.y * pull.y + way.z * pull.z
  return mm > thereMm && !(mm < 4 * thereMm && along < 0)
}

/**
 * Down; before the face also aside, to where the hair was combed, and back; on the shoulders in toward the neck and off
 * them before or behind.
 */
function pullAt({ x, y, z }: Moving, axes: Vec3, { side, onShoulders }: Hanging, pull: Moving) {
  const [aside, ahead] = [(x * side) / axes[0], y / axes[1]]
  const before = smoothStep(25, 55, ahead) * smoothStep(68, 46, aside) * smoothStep(-135, -100, z / axes[2])
  pull.x = side * (1.3 * before - 0.8 * onShoulders * smoothStep(50, 80, aside))
  pull.y = -0.55 * before + onShoulders * (ahead > shoulderMiddleY ? 0.5 : -0.5)
  pull.z = -1
  normalizeInPlace(pull)
}

/** To which side a strand was combed, and how much it lies on the shoulders, 0 to 1. */
type Hanging = { side: number; onShoulders: number }

/** From here on hair feels the shoulders come, mm. */
const nearShouldersMm = 80

/** Hair that comes down before this lies on the chest, what comes down behind it on the back; mm. */
const shoulderMiddleY = -34

/** Turns a direction toward the pull in their plane: the tangent of half their angle shrinks by `share`. */
function bend(way: Moving, pull: Moving, share: number) {
  const cosine = Math.max(-0.9999, Math.min(1, way.x * pull.x + way.y * pull.y + way.z * pull.z))
  const [x, y, z] = [way.x - cosine * pull.x, way.y - cosine * pull.y, way.z - cosine * pull.z]
  const aside = Math.sqrt(x * x + y * y + z * z)
  if (aside < 1e-9) return
  const half = Math.sqrt((1 - cosine) / (1 + cosine)) * share
  const along = (1 - half * half) / (1 + half * half)
  const across = (2 * half) / (1 + half * half) / aside
  way.x = along * pull.x + across * x
  way.y = along * pull.y + across * y
  way.z = along * pull.z + across * z
}

/** A lock wanders to and fro as one; each strand a little on its own. */
function stray(way: Moving, { lot, own }: Start, runMm: number, { slope, lengthMm }: StrandFigures["stray"]) {
  if (slope === 0) return
  const wave = (from: number) =>
    Math.sin(2 * Math.PI * (runMm / (lengthMm * (0.8 + 0.6 * hashRandom(from, 1))) + hashRandom(from, 2)))
  const amount = slope * (wave(lot) + 0.35 * wave(own))
  const turn = 2 * Math.PI * hashRandom(lot, 3)
  way.x += amount * Math.cos(turn)
  way.y += amount * Math.sin(turn)
  normalizeInPlace(way)
}

const step = (at: Moving, way: Moving, mm: number) => {
  at.x += way.x * mm
  at.y += way.y * mm
  at.z += way.z * mm
}

/** The last point, and the step and direction from it. */
type Keeping = Moving & { stepMm: number; way: Moving }

/** Lifts a point off what it lies on and puts it back at its step from the last. */
function lift(at: Moving, feel: Feel, layerMm: number, { x, y, z, stepMm, way }: Keeping) {
  const short = layerMm - feel.mm
  if (short <= 0) return
  way.x = at.x + feel.x * short - x
  way.y = at.y + feel.y * short - y
  way.z = at.z + feel.z * short - z
  normalizeInPlace(way)
  at.x = x + way.x * stepMm
  at.y = y + way.y * stepMm
  at.z = z + way.z * stepMm
}

function normalizeInPlace(way: Moving) {
  const size = Math.sqrt(way.x * way.x + way.y * way.y + way.z * way.z) || 1
  way.x /= size
  way.y /= size
  way.z /= size
}
