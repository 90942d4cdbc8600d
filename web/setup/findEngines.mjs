// Finds WebKitGTK and Firefox to test in beside Chromium, or installs them where apt-get may; else says that they are skipped.
import { spawnSync } from "node:child_process"
import { existsSync, readdirSync } from "node:fs"
import { join } from "node:path"

/** The paths of the engines that are here, as the tests take them from the environment. */
export function findOrInstallEngines() {
  install(["webkit2gtk-driver", "xvfb"], () => webkit() !== null)
  install(["firefox-esr"], () => firefox() !== null)
  const found = { ...webkit(), ...firefox() }
  if (!webkit()) console.log("webkit: skipped, WebKitWebDriver, its MiniBrowser or Xvfb is not here")
  if (!firefox()) console.log("firefox: skipped, Firefox is not here")
  return found
}

function webkit() {
  const driver = onPath("WebKitWebDriver")
  const browser = miniBrowser()
  return driver && browser && onPath("Xvfb") ? { WEBKIT_DRIVER: driver, WEBKIT_BROWSER: browser } : null
}

function firefox() {
  const path = process.env.FIREFOX_PATH ?? onPath("firefox-esr") ?? onPath("firefox")
  return path ? { FIREFOX_PATH: path } : null
}

/** WebKitGTK's own small browser lies in the library folder of the machine's kind. */
function miniBrowser() {
  const libraries = ["/usr/lib", "/usr/libexec", "/usr/lib64"].filter((folder) => existsSync(folder))
  const kinds = libraries.flatMap((folder) => [
    folder,
    ...readdirSync(folder).map((name) => join(folder, name)),
  ])
  return (
    kinds.map((folder) => join(folder, "webkit2gtk-4.1/MiniBrowser")).find((path) => existsSync(path)) ?? null
  )
}

const onPath = (name) =>
  (process.env.PATH ?? "")
    .split(process.platform === "win32" ? ";" : ":")
    .map((folder) => join(folder, name))
    .find((path) => existsSync(path)) ?? null

function install(packages, isHere) {
  if (isHere() || process.getuid?.() !== 0 || spawnSync("apt-get", ["--version"]).status !== 0) return
  const run = (args) =>
    spawnSync("apt-get", args, {
      stdio: ["ignore", "ignore", "inherit"],
      env: { ...process.env, DEBIAN_FRONTEND: "noninteractive" },
    })
  run(["update", "-qq"])
  run(["install", "-y", "-qq", "--no-install-recommends", ...packages])
}
