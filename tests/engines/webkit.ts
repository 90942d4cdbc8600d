import { spawn } from "node:child_process"
import { mkdirSync, readFileSync, writeFileSync } from "node:fs"
import { join } from "node:path"
import { pngOfDisplay } from "./displayPicture"
import { type Engine, until, window } from "./engine"
import { freePort, freshHome, matchWindow, type Rect, startDisplay, stopped } from "./machine"
import { keyActions, pointerActions } from "./pointerActions"

/** WebKitGTK by WebKitWebDriver: W3C WebDriver over HTTP, on a display of its own. */
export async function openWebKit(driver: string, browser: string): Promise<Engine> {
  const { home, downloads } = freshHome("webkit")
  const display = await startDisplay(home)
  const port = await freePort()
  const child = spawn(driver, [`--port=${port}`, "--host=127.0.0.1"], {
    env: { ...process.env, ...environmentOf(home, downloads, display.name) },
    stdio: "ignore",
  })
  const base = `http://127.0.0.1:${port}`
  await until("the driver of WebKit", () => ask(base, "GET", "/status"))
  const { sessionId } = await ask<{ sessionId: string }>(base, "POST", "/session", {
    capabilities: {
      alwaysMatch: { "webkitgtk:browserOptions": { binary: browser, args: ["--automation"] } },
    },
  })
  const go = <T>(method: string, path: string, body?: object) =>
    ask<T>(base, method, `/session/${sessionId}${path}`, body)
  await go("POST", "/timeouts", { script: 120_000, pageLoad: 120_000, implicit: 0 })
  const engine: Engine = {
    name: "WebKit",
    open: (address) => go("POST", "/url", { url: address }),
    run: (body, ...given) => go("POST", "/execute/sync", { script: body, args: given }),
    stroke: (places, kind) => go("POST", "/actions", { actions: pointerActions(places, kind) }),
    type: (text) => go("POST", "/actions", { actions: keyActions(text) }),
    // The driver's own screenshot does not always answer: the display is looked at instead.
    picture: async () => {
      const { x, y, height } = await go<Rect>("GET", "/window/rect")
      const page = { x, y: y + height - window.height, ...window }
      return pngOfDisplay(readFileSync(display.picture), page)
    },
    downloads,
    quit: async () => {
      await go("DELETE", "").catch(() => {})
      await stopped(child)
      await display.stop()
    },
  }
  await matchWindow(engine, (rect) => go("POST", "/window/rect", rect))
  return engine
}

function environmentOf(home: string, downloads: string, display: string) {
  mkdirSync(join(home, ".config"))
  writeFileSync(join(home, ".config/user-dirs.dirs"), `XDG_DOWNLOAD_DIR="${downloads}"\n`)
  return {
    ...{ HOME: home, DISPLAY: display, GDK_BACKEND: "x11", NO_AT_BRIDGE: "1" },
    ...{ XDG_DOWNLOAD_DIR: downloads, XDG_CONFIG_HOME: join(home, ".config") },
    ...{ XDG_CACHE_HOME: join(home, ".cache"), XDG_DATA_HOME: join(home, ".local/share") },
    ...{ WEBKIT_DISABLE_DMABUF_RENDERER: "1", LIBGL_ALWAYS_SOFTWARE: "1" },
    ...{ LANG: "en_US.UTF-8", TZ: "Europe/London" },
  }
}

async function ask<T>(base: string, method: string, path: string, body?: object): Promise<T> {
  const answer = await fetch(base + path, {
    method,
    headers: { "content-type": "application/json" },
    ...(body && { body: JSON.stringify(body) }),
    signal: AbortSignal.timeout(150_000),
  })
  const { value } = (await answer.json()) as { value: T & { error?: string; message?: string } }
  if (value?.error) throw new Error(`${value.error}: ${value.message}`)
  return value
}
