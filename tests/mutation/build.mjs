import { rm } from "node:fs/promises"
import { dirname } from "node:path"
import { pathToFileURL } from "node:url"
import { build } from "vite"
import { testsOf } from "./rooms.mjs"

/** Where a file says where it lies, it goes on saying so when it is built into another. */
const placed = {
  name: "place-of-each-file",
  transform: (code, id) =>
    code
      .replaceAll("import.meta.dirname", JSON.stringify(dirname(id)))
      .replaceAll("import.meta.url", JSON.stringify(pathToFileURL(id).href)),
}

/** Builds every test of the room into one file with all that it loads: a mutant is tried by running few such files again. */
await rm("built", { recursive: true, force: true })
for (const [i, file] of testsOf().entries())
  await build({
    configFile: false,
    logLevel: "error",
    plugins: [placed],
    ssr: { noExternal: true, external: ["vitest"] },
    build: {
      ssr: file,
      outDir: "built",
      emptyOutDir: false,
      copyPublicDir: false,
      minify: false,
      target: "node20",
      rolldownOptions: { output: { entryFileNames: `${i}.js`, codeSplitting: false } },
    },
  })
