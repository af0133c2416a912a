/** Messages that are said without any values. */
export type Plain<Key extends string> = { [Each in Key]: undefined }
