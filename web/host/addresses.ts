import { hostname, networkInterfaces } from "node:os"

/** This computer's addresses in its local networks (IPv4). */
export const networkAddresses = (): string[] =>
  Object.values(networkInterfaces())
    .flatMap((addresses) => addresses ?? [])
    .filter(({ family, internal }) => family === "IPv4" && !internal)
    .map(({ address }) => address)

/** Every name that a device of the network, or this computer itself, may ask for it by. */
export const namesOfHost = (): string[] => [
  ...networkAddresses(),
  "127.0.0.1",
  "localhost",
  `${hostname()
    .toLowerCase()
    .replace(/\.local$|[^a-z0-9-]/g, "")}.local`,
]
