import { readdirSync } from "node:fs"

/** The rooms that are mutated, each with the folders of the tests that are to hold it. */
export const rooms = {
  mixing: { folder: "web/core/mixing", tests: ["web/core/mixing"] },
  bowls: { folder: "web/core/bowls", tests: ["web/core/bowls"] },
  schedule: { folder: "web/core/schedule", tests: ["web/core/schedule"] },
  cautions: { folder: "web/core/cautions", tests: ["web/core/cautions"] },
  chair: { folder: "web/core/chair", tests: ["web/core/chair"] },
  weighing: { folder: "web/core/weighing", tests: ["web/core/weighing", "web/core/grams"] },
  section: { folder: "geometry/section", tests: ["geometry/section"] },
  hair: { folder: "geometry/hair", tests: ["geometry/hair"] },
}

/** Chosen by `ROOM=mixing npm run mutate`. */
export const room = process.env.ROOM ?? "mixing"
if (!rooms[room]) throw new Error(`ROOM is ${room}; rooms are ${Object.keys(rooms).join(", ")}`)

/** The tests of the room, in one order. */
export const testsOf = () =>
  rooms[room].tests.flatMap((folder) =>
    readdirSync(`tests/${folder}`, { recursive: true })
      .filter((name) => name.endsWith(".test.ts"))
      .sort()
      .map((name) => `tests/${folder}/${name}`),
  )
