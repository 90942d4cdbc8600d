import type { Page } from "playwright-core"

/** Of each drawn layer of the large view, how many pixels it has and how many of them are opaque and darker than a grey. */
export const darkPixels = (page: Page, grey: number) =>
  page.locator(".pane.large .pane-paper canvas").evaluateAll(
    (layers, darkerThan) =>
      layers.map((layer) => {
        const canvas = layer as HTMLCanvasElement
        const pixels = canvas.getContext("2d")?.getImageData(0, 0, canvas.width, canvas.height).data ?? []
        let dark = 0
        for (let i = 0; i < pixels.length; i += 4)
          if (pixels[i + 3] > 200 && pixels[i] < darkerThan) dark += 1
        return { dark, all: canvas.width * canvas.height }
      }),
    grey,
  )
