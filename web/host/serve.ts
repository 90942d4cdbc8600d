import { createServer, type RequestListener, type Server } from "node:http"
import { createServer as createSecureServer } from "node:https"
import type { AddressInfo } from "node:net"
import { type Answer, type Asked, answer } from "./answer"
import type { ServedBuild } from "./readBuild"

export type Tls = { key: string; cert: string }
export type ServeOptions = { host: string; port: number; tls?: Tls }
export type Serving = { port: number; stop(): Promise<void> }

const portsToTry = 20

/** Serves a build until stopped; `build` is asked for at each request. */
export const serveBuild = (build: () => ServedBuild, options: ServeOptions) =>
  serve((asked) => answer(asked, build()), options)

/** Answers requests on the port, or on the next one that is free; port 0 is any. */
export async function serve(toAnswer: (asked: Asked) => Answer, options: ServeOptions): Promise<Serving> {
  const listener: RequestListener = ({ method = "GET", url = "/", headers }, response) => {
    const { status, headers: own, body } = toAnswer({ method, url, headers })
    response.writeHead(status, own).end(body)
  }
  const server = options.tls ? createSecureServer(options.tls, listener) : createServer(listener)
  await listen(server, options, portsToTry)
  return {
    port: (server.address() as AddressInfo).port,
    stop: () =>
      new Promise((done) => {
        server.close(() => done())
        server.closeAllConnections()
      }),
  }
}

function listen(server: Server, { host, port }: ServeOptions, tries: number): Promise<void> {
  return new Promise((done, fail) => {
    const refused = (error: NodeJS.ErrnoException) => {
      if (error.code !== "EADDRINUSE" || port === 0 || tries <= 1) return fail(error)
      listen(server, { host, port: port + 1 }, tries - 1).then(done, fail)
    }
    server.once("error", refused)
    server.listen(port, host, () => {
      server.off("error", refused)
      done()
    })
  })
}
