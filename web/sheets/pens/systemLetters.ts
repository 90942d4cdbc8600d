import type { Weight } from "./page"

/** The system's own fonts, where there is a screen to draw them on: for letters that the sheets' typeface lacks. */
export type SystemLetters = {
  /** False where the system would draw no more than a stand-in. */
  has(codePoint: number): boolean
  /** Width of a run of letters as they stand side by side, in ems. */
  widthEm(run: string, weight: Weight): number
  picture(run: string, setting: RunSetting): RunPicture
}
export type RunSetting = { weight: Weight; sizePt: number; ink: string }

/** A run of letters as pixels, and where they lie from the beginning of its base line, in ems, y down. */
export type RunPicture = {
  pixels: { data: Uint8ClampedArray; width: number; height: number }
  leftEm: number
  topEm: number
  widthEm: number
  heightEm: number
}

/** Whatever the system has; the preview and the paper name it alike. */
export const systemFamily = "system-ui, sans-serif"

export const weightNumbers: Record<Weight, number> = { regular: 400, semibold: 600 }

/** All is measured at one size, so that a run is as wide for its letters on every line. */
const emPx = 100
const pixelsPerInch = 400
const looksPx = 24

/** Two places of the Unicode table without a letter, one pair for each length of a code that a stand-in may spell out. */
const unused = [
  [0x378, 0x379],
  [0x5ff00, 0x5ffa5],
] as const

/** The system's letters; null where there is nothing to draw on. */
export function systemLetters(): SystemLetters | null {
  const paper = openPaper()
  if (!paper) return null
  const known = new Map<number, boolean>()
  const widths = new Map<string, number>()
  const standIns = unused.map((pair) => standInOf(paper, pair))
  const look = (codePoint: number) => {
    const { inked, widthPx } = lookAt(paper, codePoint)
    const isDrawn = inked.some(Boolean)
    return isDrawn && !standIns.some((each) => isStandIn(each, { inked, widthPx }))
  }
  return {
    has(codePoint) {
      const has = known.get(codePoint) ?? look(codePoint)
      known.set(codePoint, has)
      return has
    },
    widthEm(run, weight) {
      const name = `${weight} ${run}`
      const width = widths.get(name) ?? setRun(paper, weight).measureText(run).width / emPx
      widths.set(name, width)
      return width
    },
    picture: (run, setting) => drawRun(paper, run, setting),
  }
}

type Paper = OffscreenCanvasRenderingContext2D | CanvasRenderingContext2D

function openPaper(): Paper | null {
  if (typeof document !== "undefined")
    return document.createElement("canvas").getContext("2d", { willReadFrequently: true })
  if (typeof OffscreenCanvas === "undefined") return null
  return new OffscreenCanvas(1, 1).getContext("2d", { willReadFrequently: true })
}

function setRun(paper: Paper, weight: Weight, px = emPx): Paper {
  paper.font = `${weightNumbers[weight]} ${px}px ${systemFamily}`
  paper.textBaseline = "alphabetic"
  paper.textAlign = "left"
  paper.direction = "ltr"
  return paper
}

type Look = { inked: readonly boolean[]; widthPx: number }

/** One letter drawn by itself, small. */
function lookAt(paper: Paper, codePoint: number): Look {
  const side = 3 * looksPx
  const letter = String.fromCodePoint(codePoint)
  paper.canvas.width = paper.canvas.height = side
  setRun(paper, "regular", looksPx).fillText(letter, looksPx, 2 * looksPx)
  const { data } = paper.getImageData(0, 0, side, side)
  return {
    inked: Array.from({ length: side * side }, (_, i) => data[4 * i + 3] > 96),
    widthPx: paper.measureText(letter).width,
  }
}

/** What two letters that do not exist have in common: a box, in some browsers with their codes in it. */
function standInOf(paper: Paper, [one, other]: readonly [number, number]): Look {
  const [first, second] = [lookAt(paper, one), lookAt(paper, other)]
  return { inked: first.inked.map((isInked, i) => isInked && second.inked[i]), widthPx: first.widthPx }
}

const isStandIn = (box: Look, { inked, widthPx }: Look) =>
  Math.abs(widthPx - box.widthPx) < 0.01 && box.inked.every((isInked, i) => !isInked || inked[i])

function drawRun(paper: Paper, run: string, { weight, sizePt, ink }: RunSetting): RunPicture {
  const scale = (sizePt * pixelsPerInch) / 72 / emPx
  const box = setRun(paper, weight).measureText(run)
  const left = Math.floor(-box.actualBoundingBoxLeft * scale) - 1
  const top = Math.floor(-box.actualBoundingBoxAscent * scale) - 1
  const width = Math.ceil(box.actualBoundingBoxRight * scale) + 1 - left
  const height = Math.ceil(box.actualBoundingBoxDescent * scale) + 1 - top
  paper.canvas.width = width
  paper.canvas.height = height
  // Another size of the canvas has made it forget how it is set.
  setRun(paper, weight).setTransform(scale, 0, 0, scale, -left, -top)
  paper.fillStyle = ink
  paper.fillText(run, 0, 0)
  const { data } = paper.getImageData(0, 0, width, height)
  const em = scale * emPx
  return {
    pixels: { data, width, height },
    leftEm: left / em,
    topEm: top / em,
    widthEm: width / em,
    heightEm: height / em,
  }
}
