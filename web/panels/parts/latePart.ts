import { type ComponentType, lazy } from "react"

/** A part of the app that is loaded when it is first shown, and asked for again after it did not come. */
export type LatePart<P extends object> = { now(): ComponentType<P>; again(): ComponentType<P> }

export function latePart<P extends object>(load: () => Promise<ComponentType<P>>): LatePart<P> {
  const begin = (): ComponentType<P> => lazy(async () => ({ default: await load() }))
  let newest = begin()
  return {
    now: () => newest,
    again: () => {
      newest = begin()
      return newest
    },
  }
}
