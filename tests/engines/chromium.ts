import { join } from "node:path"
import { newVisitor } from "../support/browser"
import { type Engine, language, window } from "./engine"
import { freshHome } from "./machine"
import { waypoints } from "./pointerActions"

/** Chromium through the same few acts: what the others are compared with. openBrowser() must come first. */
export async function openChromium(): Promise<Engine> {
  const { downloads } = freshHome("chromium")
  const context = await newVisitor({ viewport: window, locale: language })
  const page = await context.newPage()
  page.on("download", (file) => void file.saveAs(join(downloads, file.suggestedFilename())))
  return {
    name: "Chromium",
    open: async (address) => void (await page.goto(address)),
    // A text is evaluated by the browser itself; in the page the policy would forbid it.
    run: (body, ...given) => page.evaluate(`(function () { ${body} }).apply(null, ${JSON.stringify(given)})`),
    stroke: async (places) => {
      for (const [i, [x, y]] of waypoints(places).entries()) {
        await page.mouse.move(x, y)
        if (i === 0) await page.mouse.down()
      }
      await page.mouse.up()
    },
    type: (text) => page.keyboard.type(text),
    picture: () => page.screenshot(),
    downloads,
    quit: () => context.close(),
  }
}
