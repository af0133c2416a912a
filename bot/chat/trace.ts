/** Where a fault of ours happened: its kind and stack frames. No message, which may repeat what a person typed. */
export const trace = (error: unknown): string => {
  if (!(error instanceof Error)) return 'something thrown that is no error'
  const frames = (error.stack ?? '').split('\n').filter((row) => /^\s+at /.test(row))
  return [error.name, ...frames].join('\n')
}
