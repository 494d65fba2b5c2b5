/** What to say of something that was thrown. */
export const failureText = (error: unknown): string =>
  error instanceof Error ? error.message : String(error);
