/** The first letter or figure of each part of a name, in capitals; no more of them than there is room for. */
export const initialsOf = (name: string, most = Number.POSITIVE_INFINITY): string =>
  name
    .split(/[\s-]+/u)
    .flatMap((part) => part.match(/[\p{L}\p{N}]/u)?.[0] ?? [])
    .slice(0, most)
    .join("")
    .toLocaleUpperCase()
