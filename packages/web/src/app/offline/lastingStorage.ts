let asked: Promise<boolean> | null = null;

/**
 * Asks the browser not to clear what is kept on this device when room gets short, and tells whether it agreed.
 * Some browsers put the question to the person, so it is asked when the first entry is kept, and once a visit.
 */
export function askForLastingStorage(): Promise<boolean> {
  asked ??= ask();
  return asked;
}

async function ask(): Promise<boolean> {
  try {
    return (await navigator.storage.persisted()) || (await navigator.storage.persist());
  } catch {
    return false;
  }
}
