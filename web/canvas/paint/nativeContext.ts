import type { Context } from "konva/lib/Context"

/** The browser's own 2D context under Konva's: cheaper, and the same one that any drawing code knows. */
export const nativeContext = (context: Context): CanvasRenderingContext2D => context._context

/** What a Konva shape draws by. */
export const sceneOf = (draw: (context: CanvasRenderingContext2D) => void) => (context: Context) =>
  draw(nativeContext(context))
