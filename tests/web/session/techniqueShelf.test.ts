import "fake-indexeddb/auto"
import { beforeEach, describe, expect, it } from "vitest"
import { newId } from "../../../web/core/document/newId"
import {
  keepTechnique,
  readTechniques,
  removeTechnique,
  techniqueStore,
} from "../../../web/session/techniqueShelf"
import { openShelf, type Shelf } from "../../../web/storage/shelf"
import { usualTechnique } from "../../support/techniques"

let name: string
let shelf: Shelf
beforeEach(() => {
  name = `techniques ${newId()}`
  shelf = openShelf(name)
})

const own = { ...usualTechnique("bright-frame"), id: "own-1", name: "Soft corner" }
const names = () => techniqueStore.getState().own.map((each) => each.name)

describe("techniques of one's own", () => {
  it("are there for the next visit, by name", async () => {
    await keepTechnique(own, shelf)
    await keepTechnique({ ...own, id: "own-2", name: "Bright corner" }, shelf)
    await readTechniques(openShelf(name))
    expect(names()).toEqual(["Bright corner", "Soft corner"])
    expect(techniqueStore.getState().own[1]).toEqual(own)
  })

  it("are changed under their id, taken off, and put back", async () => {
    await keepTechnique(own, shelf)
    await keepTechnique({ ...own, name: "Softer corner" }, shelf)
    expect(names()).toEqual(["Softer corner"])
    await removeTechnique(own.id, shelf)
    expect(names()).toEqual([])
    await keepTechnique(own, shelf)
    expect(names()).toEqual(["Soft corner"])
  })

  it("stay where they are when they cannot be read, and are counted", async () => {
    await shelf.connection.run((database) =>
      database.put("techniques", { id: "odd", text: '{"kind":"partline-technique","version":4}' }),
    )
    await keepTechnique(own, shelf)
    expect(techniqueStore.getState()).toMatchObject({ own: [own], unreadable: 1, fault: null })
    const kept = await shelf.connection.run((database) => database.getAll("techniques"))
    expect(kept.map(({ id }) => id)).toEqual(["odd", "own-1"])
  })

  it("say so when the browser cannot keep them", async () => {
    const broken: Shelf = {
      ...shelf,
      connection: {
        run: () => Promise.reject(new DOMException("", "QuotaExceededError")),
        look: async () => [],
        close() {},
      },
    }
    expect(await keepTechnique(own, broken)).toBe(false)
    expect(techniqueStore.getState().fault).toEqual({ code: "full", what: "technique" })
  })
})
