import { execFileSync } from "node:child_process"
import { readFileSync } from "node:fs"

const has = (tool: string) => {
  try {
    execFileSync(tool, ["--version"], { stdio: "ignore" })
    return true
  } catch (error) {
    return (error as NodeJS.ErrnoException).code !== "ENOENT"
  }
}

/** What qpdf finds wrong with a file; nothing where it is not here. */
export function pdfFaults(file: string): string {
  if (!has("qpdf")) return ""
  try {
    const said = execFileSync("qpdf", ["--check", file], { encoding: "utf8", stdio: "pipe" })
    return /No syntax or stream encoding errors/.test(said) ? "" : said
  } catch (error) {
    return String(error)
  }
}

/** The first page as a rasterizer of its own draws it, 150 pixels an inch: the share of dark pixels in a box, mm; null without it. */
export function inkOf(
  file: string,
): ((box: { left: number; top: number; right: number; bottom: number }) => number) | null {
  if (!has("pdftoppm")) return null
  execFileSync("pdftoppm", ["-r", "150", "-gray", "-f", "1", "-singlefile", file, file])
  const bytes = readFileSync(`${file}.pgm`)
  const [, width, height] = /^P5\s+(\d+)\s+(\d+)\s+255\s/.exec(bytes.toString("latin1", 0, 40)) ?? []
  const [wide, high] = [Number(width), Number(height)]
  const pixels = bytes.subarray(bytes.length - wide * high)
  const px = (mm: number) => Math.round((mm * 150) / 25.4)
  return ({ left, top, right, bottom }) => {
    let dark = 0
    for (let y = px(top); y < px(bottom); y++)
      for (let x = px(left); x < px(right); x++) if (pixels[y * wide + x] < 128) dark += 1
    return dark / ((px(right) - px(left)) * (px(bottom) - px(top)))
  }
}
