// Plain Node, no dependency: makes sure that what package-lock.json asks for is installed.
import { execFileSync } from "node:child_process"
import { createHash } from "node:crypto"
import { existsSync, readFileSync, writeFileSync } from "node:fs"
import { dirname, join, resolve } from "node:path"
import { fileURLToPath } from "node:url"

export const root = resolve(dirname(fileURLToPath(import.meta.url)), "../..")

const atLeast = [20, 19]

/** Install when the lock file or Node has changed since the last install; otherwise do nothing. */
export function ensureInstalled() {
  const [major, minor] = process.versions.node.split(".").map(Number)
  if (major < atLeast[0] || (major === atLeast[0] && minor < atLeast[1])) {
    console.error(`Partline needs Node ${atLeast.join(".")} or newer; this is ${process.versions.node}.`)
    process.exit(1)
  }
  const stampFile = join(root, "node_modules", ".partline-installed")
  const stamp = createHash("sha256")
    .update(readFileSync(join(root, "package-lock.json")))
    .update(process.version)
    .digest("hex")
  if (existsSync(stampFile) && readFileSync(stampFile, "utf8") === stamp) return
  runNpm(["ci", "--include=dev", "--include=optional"])
  writeFileSync(stampFile, stamp)
}

function runNpm(args) {
  const npm = process.env.npm_execpath
  // What npm says goes to standard error: standard output may be somebody's JSON.
  const stdio = ["inherit", 2, 2]
  if (npm?.endsWith("js")) execFileSync(process.execPath, [npm, ...args], { cwd: root, stdio })
  else execFileSync("npm", args, { cwd: root, stdio, shell: process.platform === "win32" })
}

/** Run a tool that was installed as a package, by its own script. */
export function runTool(script, args) {
  execFileSync(process.execPath, [join(root, "node_modules", script), ...args], {
    cwd: root,
    stdio: "inherit",
  })
}
