import { headDistance } from "../scalp/headDistanceField"
import type { Vec3 } from "../surface/vec3"
import { bustFromMm, feelBust } from "./bust"
import { distanceTable } from "./distanceTable"
import type { Feel } from "./feel"

/** What hair lies on. `feel` writes into what it is given, for it is asked half a million times. */
export type Body = {
  feel(x: number, y: number, z: number, into: Feel): void
  feelEar(x: number, y: number, z: number, into: Feel): void
  /** Neck, shoulders and chest; far off above them. */
  feelBust(x: number, y: number, z: number, into: Feel): void
}

const look = distanceTable(headDistance, { low: [0, -150, -130], high: [110, 130, 150], cellMm: 5 })

/**
 * Head and neck as a table of distances, scaled by `axes`. Below the table the neck goes straight on. Within the
 * table's cells a distance is up to 0.2 mm too large where the head is round.
 */
export function headDistanceTable(axes: Vec3): Body {
  const [perX, perY, perZ] = axes.map((factor) => 1 / factor)
  const scale = Math.min(...axes)
  /** A body felt at its own size, scaled to the head. */
  const scaled = (felt: Body["feel"]) => (x: number, y: number, z: number, into: Feel) => {
    felt(x * perX, y * perY, z * perZ, into)
    const outX = into.x * perX
    const outY = into.y * perY
    const outZ = into.z * perZ
    const length = Math.sqrt(outX * outX + outY * outY + outZ * outZ) || 1
    into.mm *= scale
    into.x = outX / length
    into.y = outY / length
    into.z = outZ / length
  }
  const bust = scaled(feelBust)
  return {
    feel: scaled(look),
    feelEar: (x, y, z, into) => feelEar(x, y, z, axes, into),
    feelBust(x, y, z, into) {
      into.mm = Number.POSITIVE_INFINITY
      if (z * perZ < bustFromMm) bust(x, y, z, into)
    },
  }
}

/** The right ear as hair feels it, pressed to the head: an ellipsoid, mm. */
const earMiddle: Vec3 = [65, -14, 2]
const earHalf: Vec3 = [12, 24, 34]

/** By the first-order bound of an ellipsoid's distance, exact on its skin. */
function feelEar(x: number, y: number, z: number, axes: Vec3, into: Feel) {
  const side = x < 0 ? -1 : 1
  const u = (x * side - earMiddle[0] * axes[0]) / earHalf[0]
  const v = (y - earMiddle[1] * axes[1]) / earHalf[1]
  const w = (z - earMiddle[2] * axes[2]) / earHalf[2]
  const unit = Math.sqrt(u * u + v * v + w * w) || 1e-9
  const [outX, outY, outZ] = [u / earHalf[0], v / earHalf[1], w / earHalf[2]]
  const slope = Math.sqrt(outX * outX + outY * outY + outZ * outZ) || 1e-9
  into.mm = (unit * (unit - 1)) / slope
  into.x = (side * outX) / slope
  into.y = outY / slope
  into.z = outZ / slope
}
