type Writing = { abort(): void; readonly done: Promise<void> }

/** Does work within a transaction and waits until it is on the disk; whatever goes wrong, nothing of it stays. */
export async function allOrNothing<T>(transaction: Writing, work: () => Promise<T>): Promise<T> {
  try {
    const [result] = await Promise.all([work(), transaction.done])
    return result
  } catch (error) {
    giveUp(transaction)
    await transaction.done.catch(() => {})
    throw error
  }
}

function giveUp(transaction: Writing) {
  try {
    transaction.abort()
  } catch {
    // It has ended by itself.
  }
}

/** Begins all of these in this tick; one that cannot even begin fails as the others do. */
export const allAtOnce = <T extends readonly unknown[]>(
  ...begin: { readonly [I in keyof T]: () => Promise<T[I]> }
): Promise<T> => Promise.all(begin.map(async (each) => each())) as unknown as Promise<T>
