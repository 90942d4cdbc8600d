// Finds a Chromium to test in, or installs one.
import { execFileSync, spawnSync } from "node:child_process"
import { existsSync } from "node:fs"
import { join } from "node:path"
import { root } from "./ensure.mjs"

const names = ["chromium", "chromium-browser", "google-chrome", "google-chrome-stable"]
const usualPlaces = [
  "/Applications/Google Chrome.app/Contents/MacOS/Google Chrome",
  "/Applications/Chromium.app/Contents/MacOS/Chromium",
  "C:\\Program Files\\Google\\Chrome\\Application\\chrome.exe",
  "C:\\Program Files (x86)\\Google\\Chrome\\Application\\chrome.exe",
]

/** The path of a Chromium, installed if need be; exits with a sentence when there is none to be had. */
export async function findOrInstallBrowser() {
  const found = findBrowser() ?? installBySystem() ?? (await installByPlaywright())
  if (found) return found
  console.error("No Chromium was found. Install Chromium or Chrome, or set CHROME_PATH to it, and run again.")
  process.exit(1)
}

function findBrowser() {
  if (process.env.CHROME_PATH) return process.env.CHROME_PATH
  const folders = (process.env.PATH ?? "").split(process.platform === "win32" ? ";" : ":")
  const onPath = folders.flatMap((folder) => names.map((name) => join(folder, name)))
  return [...onPath, ...usualPlaces].find((path) => existsSync(path)) ?? null
}

function installBySystem() {
  if (process.getuid?.() !== 0 || spawnSync("apt-get", ["--version"]).status !== 0) return null
  const environment = { ...process.env, DEBIAN_FRONTEND: "noninteractive" }
  spawnSync("apt-get", ["update", "-qq"], { stdio: "inherit", env: environment })
  spawnSync("apt-get", ["install", "-y", "-qq", "chromium"], {
    stdio: ["ignore", "ignore", "inherit"],
    env: environment,
  })
  return findBrowser()
}

async function installByPlaywright() {
  try {
    execFileSync(
      process.execPath,
      [join(root, "node_modules/playwright-core/cli.js"), "install", "chromium"],
      {
        stdio: "inherit",
      },
    )
    const { chromium } = await import("playwright-core")
    return chromium.executablePath()
  } catch {
    return null
  }
}
