import type { HelpTopic } from '../../text/help-text.ts'

/** Which commands belong to which topic, by their paths; those of `jar` that are not named here belong to the jars. */
const PATHS: Readonly<Record<Exclude<HelpTopic, 'jars'>, readonly string[]>> = {
  planning: ['plan', 'botanical', 'cautions', 'shopping', 'trouble', 'handbook', 'keeping'],
  sums: ['syrup', 'mix', 'dilute', 'blend', 'adjust', 'measure', 'serving', 'label'],
  sharing: ['again', 'share', 'notebook', 'calendar'],
  you: ['reminders', 'settings', 'forget'],
}

export const HELP_TOPICS: readonly HelpTopic[] = ['planning', 'jars', 'sums', 'sharing', 'you']

export const isHelpTopic = (typed: string): typed is HelpTopic => HELP_TOPICS.some((topic) => topic === typed)

/** What a command is about. */
export const topicOf = (path: string): HelpTopic => {
  const [topic] = Object.entries(PATHS).find(([, paths]) => paths.includes(path)) ?? ['jars']
  return topic as HelpTopic
}
