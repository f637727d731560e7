/** Returns an error as text, with its stack if it has one. The stack contains the message in some browsers only. */
export function describeError(error: unknown): string {
  if (!(error instanceof Error)) return String(error);
  const { name, message, stack = '' } = error;
  return stack.includes(message) ? stack : `${name}: ${message}\n${stack}`;
}
