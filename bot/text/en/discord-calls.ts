/** What is said in Discord where there is no reply: about buttons, pace and stopping. */
export const callText = {
  notYours: () => 'This button was made for somebody else. Ask me yourself: /help lists what I can do.',
  /** A button of which this version makes nothing. */
  unknownButton: () =>
    'I no longer know this button, so nothing was changed. Type the command instead; /help lists them.',
  twice: () => 'You pressed that twice in a row, so I did it once. Press it again if you meant it twice.',
  /** Discord takes a form only as a first answer, which has to come soon. */
  formLate: () => 'I was too slow to show you the form. Ask for it again; nothing was changed.',
  tooFast: ({ seconds }: { readonly seconds: number }) =>
    `That is a lot at once, and I take 30 commands a minute. Please ask again in ${seconds === 1 ? 'a second' : `${seconds} seconds`}; this one was not done.`,
  stopping: () => 'I am just being shut down, so this was not done. Please ask again in a minute.',
}

export type CallText = typeof callText
