/** The whole address of something that the server hands over as a file. */
export function addressIn(path: string): string {
  return new URL(path, new URL('.', location.href)).href;
}
