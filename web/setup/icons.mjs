// node web/setup/icons.mjs: renders web/public/icon.svg to the PNGs that home screens take. Run after a change of the drawing.
import { readFileSync, writeFileSync } from "node:fs"
import { join } from "node:path"
import { root } from "./ensure.mjs"
import { findOrInstallBrowser } from "./findBrowser.mjs"

const folder = join(root, "web/public")
const paper = "#fbf8f2"
const drawing = `data:image/svg+xml;base64,${readFileSync(join(folder, "icon.svg")).toString("base64")}`

/** `share` of the width is drawing, the rest paper: a mask may cut off all but the middle 80 %, corners first. */
const icons = [
  { file: "icon-192.png", size: 192, share: 1, ground: "transparent" },
  { file: "icon-512.png", size: 512, share: 1, ground: "transparent" },
  { file: "icon-maskable-512.png", size: 512, share: 0.78, ground: paper },
  { file: "apple-touch-icon.png", size: 180, share: 0.94, ground: paper },
]

const { chromium } = await import("playwright-core")
const browser = await chromium.launch({
  executablePath: await findOrInstallBrowser(),
  args: process.getuid?.() === 0 ? ["--no-sandbox"] : [],
})
for (const { file, size, share, ground } of icons) {
  const page = await browser.newPage({ viewport: { width: size, height: size } })
  await page.setContent(
    `<body style="margin:0;display:grid;place-items:center;height:100vh;background:${ground}">
      <img src="${drawing}" width="${size * share}" height="${size * share}">`,
  )
  await page.locator("img").evaluate((image) => image.decode())
  writeFileSync(join(folder, file), await page.screenshot({ omitBackground: ground === "transparent" }))
  await page.close()
}
await browser.close()
