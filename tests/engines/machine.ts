import { type ChildProcess, spawn } from "node:child_process"
import { mkdirSync, mkdtempSync } from "node:fs"
import { createServer } from "node:net"
import { tmpdir } from "node:os"
import { join } from "node:path"
import { type Engine, window } from "./engine"

/** A home of its own for an engine, so that nothing of the person's is read or changed. */
export function freshHome(name: string) {
  const home = mkdtempSync(join(tmpdir(), `partline-${name}-`))
  const downloads = join(home, "Downloads")
  mkdirSync(downloads)
  return { home, downloads }
}

export const freePort = () =>
  new Promise<number>((done) => {
    const server = createServer().listen(0, "127.0.0.1", () => {
      const address = server.address()
      server.close(() => done(typeof address === "object" && address ? address.port : 0))
    })
  })

/** A display that nobody sees, on a free number; its picture lies in a file in the folder. */
export async function startDisplay(folder: string) {
  const size = `${window.width + 200}x${window.height + 200}x24`
  const options = ["-screen", "0", size, "-fbdir", folder, "-nolisten", "tcp", "-noreset"]
  const child = spawn("Xvfb", ["-displayfd", "3", ...options], {
    stdio: ["ignore", "ignore", "ignore", "pipe"],
  })
  const name = await new Promise<string>((done, fail) => {
    let text = ""
    child.on("error", fail)
    child.on("exit", (code) => fail(new Error(`Xvfb ended with ${code}`)))
    child.stdio[3]?.on("data", (chunk) => {
      text += chunk
      if (text.includes("\n")) done(`:${text.trim()}`)
    })
  })
  return { name, picture: join(folder, "Xvfb_screen0"), stop: () => stopped(child) }
}

/** Ends a program that was started here, and waits until it has gone. */
export function stopped(child: ChildProcess): Promise<void> {
  if (child.exitCode !== null || child.signalCode !== null) return Promise.resolve()
  return new Promise((done) => {
    const force = setTimeout(() => child.kill("SIGKILL"), 10_000)
    child.once("exit", () => {
      clearTimeout(force)
      done()
    })
    child.kill()
  })
}

export type Rect = { x: number; y: number; width: number; height: number }

/** Sizes the window until the page in it has just the size that the pictures are compared at. */
export async function matchWindow(engine: Engine, resize: (rect: Rect) => Promise<unknown>) {
  const asked = { x: 0, y: 0, ...window }
  for (let tries = 0; tries < 6; tries++) {
    await resize({ ...asked })
    const [width, height] = await settledSize(engine)
    if (width === window.width && height === window.height) return
    asked.width += window.width - width
    asked.height += window.height - height
  }
  throw new Error(`${engine.name} has no window of ${window.width} by ${window.height}`)
}

/** The size of the page once it has been the same twice. */
async function settledSize(engine: Engine): Promise<[number, number]> {
  let last = [0, 0]
  for (;;) {
    const now = await engine.run<[number, number]>("return [innerWidth, innerHeight]")
    if (now[0] === last[0] && now[1] === last[1]) return now
    last = now
    await new Promise((done) => setTimeout(done, 250))
  }
}
