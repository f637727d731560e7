/** An error as text, with its stack where it has one (in which some browsers repeat the message, others do not). */
export function describeError(error: unknown): string {
  if (!(error instanceof Error)) return String(error);
  const { name, message, stack = '' } = error;
  return stack.includes(message) ? stack : `${name}: ${message}\n${stack}`;
}
