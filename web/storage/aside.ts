import { isGroup } from "../core/checks/problem"
import { openPlan } from "../core/file/planFile"
import { allAtOnce, allOrNothing } from "./allOrNothing"
import { entryOf, isRecord } from "./planRecord"
import type { Shelf } from "./shelf"

/** A plan that could not be read and was set aside: what is known of it, and all that was written. */
export type Aside = { key: string; name: string; savedAt: string | null; text: string }

/** What was set aside, each as it was written. */
export async function listAside({ connection }: Shelf): Promise<Aside[]> {
  const [keys, values] = await connection.run((database) =>
    Promise.all([database.getAllKeys("aside"), database.getAll("aside")]),
  )
  return values.map((value, i) => asideOf(keys[i], value))
}

function asideOf(key: string, value: unknown): Aside {
  const field = (name: string) => (isGroup(value) && typeof value[name] === "string" ? value[name] : null)
  return {
    key,
    name: field("name") ?? "",
    savedAt: field("savedAt"),
    text: field("text") ?? JSON.stringify(value, null, 1),
  }
}

/** Tries again what was set aside: a Partline that can read it by now has it on the shelf as it was. Gives how many are back. */
export const retryAside = ({ connection }: Shelf): Promise<number> =>
  connection.run(async (database) => {
    const [keys, values] = await Promise.all([database.getAllKeys("aside"), database.getAll("aside")])
    const readable = values.flatMap((record, i) =>
      isRecord(record) && openPlan(record.text, () => []).ok ? [{ key: keys[i], record }] : [],
    )
    if (readable.length === 0) return 0
    const transaction = database.transaction(["plans", "entries", "aside"], "readwrite", {
      durability: "strict",
    })
    const store = transaction.objectStore.bind(transaction)
    return allOrNothing(transaction, async () => {
      let back = 0
      for (const { key, record } of readable) {
        if (await store("plans").get(record.id)) continue
        await allAtOnce(
          () => store("plans").put(record),
          () => store("entries").put(entryOf(record)),
          () => store("aside").delete(key),
        )
        back++
      }
      return back
    })
  })

/** Throws away what was set aside. */
export const forgetAside = ({ connection }: Shelf, key: string) =>
  connection.run((database) => database.delete("aside", key))
