// npm run plan: the product without a screen. JSON on standard output, sentences on standard error.
import { mkdirSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs"
import { resolve } from "node:path"
import { ensureInstalled, root } from "./ensure.mjs"

ensureInstalled()
const { createServer } = await import("vite")
// No server that listens: only its module loader, which must outlive the first import, for words come on demand.
const vite = await createServer({
  root: `${root}/web`,
  configFile: false,
  logLevel: "error",
  appType: "custom",
  server: { middlewareMode: true, hmr: false, watch: null },
  optimizeDeps: { noDiscovery: true, include: [] },
})
const module = await vite.ssrLoadModule("/command/command.ts")

// npm moves to the project's folder first; paths are meant from where the person stands.
const from = (path) => resolve(process.env.INIT_CWD ?? process.cwd(), path)
const desk = {
  readText: (path) => readFileSync(from(path), "utf8"),
  writeBytes: (path, bytes) => writeFileSync(from(path), bytes),
  readFont: async (file) => new Uint8Array(readFileSync(`${root}/web/sheets/pens/fonts/${file}`)),
  folders: {
    list: (path) =>
      readdirSync(from(path), { withFileTypes: true })
        .filter((each) => each.isFile())
        .map(({ name }) => name),
    remove: (path) => rmSync(from(path)),
    make: (path) => mkdirSync(from(path), { recursive: true }),
  },
  // One line that is written over again and again, for whoever sits before it.
  ...(process.stderr.isTTY && { progress: (line) => process.stderr.write(`\r\x1b[K${line}`) }),
}
// Exit code 1 would say that the plan has a stop.
const refuse = (fault) => ({ exit: 2, out: "", err: `Partline could not do this: ${fault.message}\n` })
const { exit, out, err } = await module.runCommand(process.argv.slice(2), desk).catch(refuse)
if (process.stderr.isTTY) process.stderr.write("\r\x1b[K")
process.stdout.write(out)
process.stderr.write(err)
process.exitCode = exit
await vite.close()
