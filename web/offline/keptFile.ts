import { addressOf, type Build } from "./build"

type Asked = { method: string; url: string }

/**
 * The address under which a build keeps what is asked for; null for what is not its own and goes to the network. A page is
 * only ever given files of the build whose index.html it was opened with.
 */
export function keptFile({ method, url }: Asked, { files }: Build, base: URL): URL | null {
  const { origin, pathname } = new URL(url)
  if (method !== "GET" || origin !== base.origin || !pathname.startsWith(base.pathname)) return null
  const isOwn = ([path]: readonly [string, string]) => new URL(path, base).pathname === pathname
  if (pathname === base.pathname) return base
  const own = files.find(isOwn)
  return own ? addressOf(own[0], base) : null
}
