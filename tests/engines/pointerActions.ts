import type { Place, PointerKind } from "./engine"

const steps = 8

/** A stroke as W3C WebDriver "pointer" actions (W3C WebDriver, section 15). */
export function pointerActions(places: readonly Place[], kind: PointerKind) {
  const [first, ...rest] = waypoints(places)
  const move = ([x, y]: Place, duration: number) => ({
    type: "pointerMove",
    duration,
    x,
    y,
    origin: "viewport",
  })
  const moves = rest.map((place) => move(place, 16))
  const pause = moves.length > 0 ? [{ type: "pause", duration: 60 }] : []
  const lift = { type: "pointerUp", button: 0 }
  const actions = [move(first, 0), { type: "pointerDown", button: 0 }, ...moves, ...pause, lift]
  return [{ type: "pointer", id: kind, parameters: { pointerType: kind }, actions }]
}

/** Text as "key" actions of the same chapter, one key after the other. */
export const keyActions = (text: string) => [
  {
    type: "key",
    id: "keys",
    actions: [...text].flatMap((value) => [
      { type: "keyDown", value },
      { type: "keyUp", value },
    ]),
  },
]

/** The way of a stroke in even steps, in whole pixels: every engine is led along the very same places. */
export function waypoints(places: readonly Place[]): Place[] {
  const [first, ...rest] = places
  const between = (from: Place, to: Place, share: number): Place => [
    Math.round(from[0] + (to[0] - from[0]) * share),
    Math.round(from[1] + (to[1] - from[1]) * share),
  ]
  return [
    between(first, first, 0),
    ...rest.flatMap((to, leg) =>
      Array.from({ length: steps }, (_, i) => between(places[leg], to, (i + 1) / steps)),
    ),
  ]
}
