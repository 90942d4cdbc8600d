/** One build of the app: its name, and each of its files with the SHA-256 of its bytes in base64; index.html among them. */
export type Build = { id: string; files: readonly (readonly [path: string, sha256: string])[] }

/** What a page may say to the worker that keeps a newer build. */
export type PageMessage = "take-over"

const prefix = "partline-"

export const cacheName = ({ id }: Pick<Build, "id">) => `${prefix}${id}`

/** Every origin has one set of caches; only those of a build of ours are ours to look into or to delete. */
export const isBuildCache = (name: string) => name.startsWith(prefix)

/** Where a file of the build is fetched from. A host may send whoever asks for index.html to the folder: ask for that. */
export const addressOf = (path: string, base: URL) => new URL(path === "index.html" ? "./" : path, base)

/** A name with a hash in it stands for the same bytes in every build that has it. */
export const isHashed = (path: string) => path.startsWith("assets/")
