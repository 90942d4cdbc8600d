import { connect, type Socket } from "node:net"
import { until } from "./engine"

type Waiting = { done(result: unknown): void; fail(error: Error): void }

/** A line to Firefox: each message is its length in bytes, a colon and JSON; [0, id, command, data] out, [1, id, error, result] in. */
export async function connectMarionette(port: number) {
  const socket = await until("Firefox", () => dial(port))
  const waiting = new Map<number, Waiting>()
  let lastId = 0
  const greeted = new Promise<void>((hello) => {
    listen(socket, (message) => {
      if (!Array.isArray(message)) return hello()
      const [, id, error, result] = message
      const asked = waiting.get(id)
      waiting.delete(id)
      if (error) asked?.fail(new Error(`${error.error}: ${error.message}`))
      else asked?.done(result)
    })
  })
  await greeted
  const send = <T = never>(command: string, data: object = {}): Promise<T> =>
    new Promise((done, fail) => {
      lastId += 1
      waiting.set(lastId, { done: done as Waiting["done"], fail })
      const body = JSON.stringify([0, lastId, command, data])
      socket.write(`${Buffer.byteLength(body)}:${body}`)
    })
  socket.on("close", () => {
    for (const { fail } of waiting.values()) fail(new Error("Firefox has gone"))
  })
  return { send, close: () => socket.destroy() }
}

const dial = (port: number) =>
  new Promise<Socket>((done, fail) => {
    const socket = connect(port, "127.0.0.1", () => done(socket))
    socket.on("error", fail)
  })

function listen(socket: Socket, onMessage: (message: unknown) => void) {
  let rest = Buffer.alloc(0)
  socket.on("data", (chunk) => {
    rest = Buffer.concat([rest, chunk])
    for (let colon = rest.indexOf(":"); colon >= 0; colon = rest.indexOf(":")) {
      const end = colon + 1 + Number(rest.subarray(0, colon))
      if (rest.length < end) return
      const message = JSON.parse(String(rest.subarray(colon + 1, end)))
      rest = rest.subarray(end)
      onMessage(message)
    }
  })
}
