/** An id no one else has. Not crypto.randomUUID, which pages served over plain http in a salon do not have. */
export const newId = () =>
  Array.from(crypto.getRandomValues(new Uint8Array(16)), (byte) => byte.toString(16).padStart(2, "0")).join(
    "",
  )
