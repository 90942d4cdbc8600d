import { spawn } from "node:child_process"
import { mkdirSync, writeFileSync } from "node:fs"
import { join } from "node:path"
import { type Engine, language, window } from "./engine"
import { freePort, freshHome, matchWindow, stopped } from "./machine"
import { connectMarionette } from "./marionette"
import { keyActions, pointerActions } from "./pointerActions"

/** Firefox by Marionette, its own protocol over TCP: no driver program is needed. */
export async function openFirefox(browser: string): Promise<Engine> {
  const { home, downloads } = freshHome("firefox")
  const profile = join(home, "profile")
  const port = await freePort()
  mkdirSync(profile)
  writeFileSync(join(profile, "user.js"), preferences(port, downloads))
  const size = { MOZ_HEADLESS_WIDTH: `${window.width}`, MOZ_HEADLESS_HEIGHT: `${window.height + 200}` }
  const child = spawn(browser, ["--headless", "--marionette", "--no-remote", "--profile", profile], {
    env: { ...process.env, ...size, HOME: home, TZ: "Europe/London", LANG: "en_US.UTF-8" },
    stdio: "ignore",
  })
  const { send, close } = await connectMarionette(port)
  await send("WebDriver:NewSession", { capabilities: { alwaysMatch: {} } })
  await send("WebDriver:SetTimeouts", { script: 120_000, pageLoad: 120_000, implicit: 0 })
  const engine: Engine = {
    name: "Firefox",
    open: (address) => send("WebDriver:Navigate", { url: address }),
    run: async <T>(body: string, ...given: readonly unknown[]) =>
      ((await send("WebDriver:ExecuteScript", { script: body, args: given, sandbox: null })) as { value: T })
        .value,
    stroke: (places, kind) => send("WebDriver:PerformActions", { actions: pointerActions(places, kind) }),
    type: (text) => send("WebDriver:PerformActions", { actions: keyActions(text) }),
    picture: async () => {
      const shot = await send<{ value: string }>("WebDriver:TakeScreenshot", { full: false, hash: false })
      return Buffer.from(shot.value, "base64")
    },
    downloads,
    quit: async () => {
      await send("Marionette:Quit", { flags: ["eForceQuit"] }).catch(() => {})
      close()
      await stopped(child)
    },
  }
  await matchWindow(engine, (rect) => send("WebDriver:SetWindowRect", rect))
  return engine
}

/** A profile that saves files without asking and calls nobody. */
const preferences = (port: number, downloads: string) =>
  Object.entries({
    "marionette.port": port,
    "browser.download.folderList": 2,
    "browser.download.dir": downloads,
    "browser.download.useDownloadDir": true,
    "browser.download.always_ask_before_handling_new_types": false,
    "browser.download.alwaysOpenPanel": false,
    "browser.download.open_pdf_attachments_inline": false,
    "pdfjs.disabled": true,
    "browser.shell.checkDefaultBrowser": false,
    "browser.aboutwelcome.enabled": false,
    "datareporting.policy.dataSubmissionEnabled": false,
    "app.update.enabled": false,
    "network.captive-portal-service.enabled": false,
    "network.connectivity-service.enabled": false,
    "services.settings.server": "http://127.0.0.1:9/",
    "extensions.update.enabled": false,
    "browser.safebrowsing.malware.enabled": false,
    "browser.safebrowsing.phishing.enabled": false,
    "intl.accept_languages": `${language}, en`,
  })
    .map(([name, value]) => `user_pref(${JSON.stringify(name)}, ${JSON.stringify(value)});\n`)
    .join("")
