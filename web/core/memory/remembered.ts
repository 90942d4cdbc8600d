/** All that the core remembers, it remembers here: what was worked out is kept beside what it follows from, and no longer. */

/** Works a thing out once for as long as all that it follows from lives. */
export function remembered<From extends readonly [object, ...object[]], Made>(
  make: (...from: From) => Made,
): (...from: From) => Made {
  const made = new WeakMap<object, unknown>()
  return (...from) => {
    let known = made
    for (let i = 0; i < from.length - 1; i++) {
      const next = (known.get(from[i]) as WeakMap<object, unknown> | undefined) ?? new WeakMap()
      known.set(from[i], next)
      known = next
    }
    const last = from[from.length - 1]
    const found = known.get(last)
    if (found !== undefined || known.has(last)) return found as Made
    const fresh = make(...from)
    known.set(last, fresh)
    return fresh
  }
}

/**
 * Keeps of each thing what was worked out of it last, until what it stands on is another. A fresh one is made with what was
 * made before at hand.
 */
export function rememberedLast<Of extends object, On, Made>(
  isSame: (before: On, now: On) => boolean,
  make: (of: Of, on: On, before: { on: On; made: Made } | undefined) => Made,
): (of: Of, on: On) => Made {
  const last = new WeakMap<Of, { on: On; made: Made }>()
  return (of, on) => {
    const before = last.get(of)
    if (before && isSame(before.on, on)) return before.made
    const made = make(of, on, before)
    last.set(of, { on, made })
    return made
  }
}

/** The same things in the same order. */
export const isSameList = (a: readonly object[], b: readonly object[]) =>
  a.length === b.length && a.every((each, i) => each === b[i])

/** Works a thing out once for all that read the same when written down; the ones last asked for are kept, so many of them. */
export function rememberedByText<From, Made>(
  most: number,
  make: (from: From) => Made,
  textOf: (from: From) => string = JSON.stringify,
): (from: From) => Made {
  const made = new Map<string, Made>()
  // Asked for again and again while one plan is measured.
  let last: { text: string; made: Made } | null = null
  return (from) => {
    const text = textOf(from)
    if (last?.text === text) return last.made
    const found = made.get(text) ?? make(from)
    made.delete(text)
    made.set(text, found)
    for (const oldest of made.keys()) if (made.size > most) made.delete(oldest)
    last = { text, made: found }
    return found
  }
}
