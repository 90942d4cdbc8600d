import { browserBench } from "./browserBench"
import { clockBench } from "./clockBench"
import { nodeBench } from "./nodeBench"
import { tableOf } from "./table"

/** All figures of `npm run bench`, as a table. */
export async function bench(): Promise<string> {
  return tableOf([...(await browserBench()), ...(await nodeBench()), ...clockBench()])
}
