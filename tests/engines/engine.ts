/** A place in the window, CSS pixels from its top left corner. */
export type Place = readonly [x: number, y: number]
export type PointerKind = "mouse" | "touch" | "pen"

/** A window of one engine, as far as the main job needs it. */
export type Engine = {
  name: string
  open(address: string): Promise<void>
  /** Runs the body of a function in the page, with `given` as its arguments; gives what it returns. */
  run<T>(body: string, ...given: readonly unknown[]): Promise<T>
  /** Puts a pointer down on the first place, moves it through the others and lifts it on the last. */
  stroke(places: readonly Place[], kind: PointerKind): Promise<void>
  /** Types into what has the focus. */
  type(text: string): Promise<void>
  /** The window as it looks, PNG. */
  picture(): Promise<Buffer>
  /** Where files that the page saves are put. */
  downloads: string
  quit(): Promise<void>
}

/** The one language that WebKitGTK speaks on a machine that has been given no other. */
export const language = "en-US"

export const window = { width: 1366, height: 1024 }

/** Waits for a state, not for a time; a busy machine may take long, so the end is far away. */
export async function until<T>(what: string, ask: () => Promise<T>, endMs = 120_000): Promise<T & {}> {
  const end = Date.now() + endMs
  let fault: unknown = null
  for (;;) {
    try {
      const answer = await ask()
      if (answer) return answer as T & {}
      fault = null
    } catch (error) {
      // A page that is just being left has no answer.
      fault = error
    }
    if (Date.now() > end) throw new Error(`waited in vain: ${what}`, { cause: fault })
    await new Promise((done) => setTimeout(done, 60))
  }
}
