/** The four frames a point can live in. A point of one frame never passes for a point of another. */
declare const frame: unique symbol
type Framed<T, Name extends string> = T & { readonly [frame]: Name }

export type Pair = readonly [number, number]
export type Triple = readonly [number, number, number]

/**
 * A place on the scalp: [u, v] radians in the azimuthal equidistant map of directions from the head's
 * centre, pole near the crown; u to the head's right, v to the front. Independent of head size.
 */
export type SurfacePoint = Framed<Pair, "surface">

/** A point in space: [x, y, z] mm; x to the head's right, y front, z up; origin midway between the tragions. */
export type HeadPoint = Framed<Triple, "head">

/** A point of one flat view: [x, y] mm at life size; x to the viewer's right, y up. */
export type ViewPoint = Framed<Pair, "view">

/** A point of the screen: [x, y] CSS pixels from the pane's top left corner, y down. */
export type ScreenPoint = Framed<Pair, "screen">

export const surfacePoint = (u: number, v: number) => [u, v] as unknown as SurfacePoint
export const headPoint = (x: number, y: number, z: number) => [x, y, z] as unknown as HeadPoint
export const viewPoint = (x: number, y: number) => [x, y] as unknown as ViewPoint
export const screenPoint = (x: number, y: number) => [x, y] as unknown as ScreenPoint

/** The same place on the other side of the head. */
export const mirrored = ([u, v]: SurfacePoint) => surfacePoint(u === 0 ? 0 : -u, v)
