import type { Field } from "../../scalp/fields"
import { add, scale, type Vec3 } from "../../surface/vec3"

/** Where a ray first meets the surface of a distance field, head frame mm, or null; `direction` is a unit vector. */
export function castRay(field: Field, origin: Vec3, direction: Vec3): Vec3 | null {
  let travelled = 0
  for (let step = 0; step < 120 && travelled < 400; step++) {
    const [x, y, z] = add(origin, scale(direction, travelled))
    const distance = field(x, y, z)
    if (distance < 0.005) return [x, y, z]
    travelled += distance * 0.8
  }
  return null
}
