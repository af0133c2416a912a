/** What a cook would stumble over, each with what is said instead. */
export const BANNED: readonly (readonly [phrase: RegExp, instead: string])[] = [
  [/;/, 'a full stop'],
  [/\btaken for\b/i, 'mistaken for'],
  [/\b(?:it|that|this) is to\b|\bare to (?:be|become|stand|fill)\b/i, 'should, or an order'],
  [/\bnone takes it back\b|\btakes? (?:it|that|one) back\b|\btaken back\b/i, 'undo'],
  [/\breckon(?:ed|s)?\b/i, 'work out'],
  [/\bas in\b/i, 'for example, or a whole line'],
  [/\bputs? (?:\w+ ){0,4}right\b/i, 'fix'],
  [/\bbegun\b|\bbegan\b|\bbegins?\b/i, 'start'],
  [/\bof it\b.*\bof it\b/i, 'its name'],
  [/\btyped right\?/i, 'did you mean'],
  [/\byou did not say\b|\byou named no\b/i, 'I’ve assumed'],
  [/\bI (?:took|take) [^.]*\b(?:for|as)\b|\bso I took\b/i, 'I’ve used'],
  [/\bso that (?:\/|it knows)/i, 'an order'],
  [/\bcannot be made\b|\bcannot become\b/i, 'can’t'],
  [/\bdo not\b|\bdoes not\b|\bcannot\b|\bis not\b|\bare not\b/i, 'don’t, doesn’t, can’t, isn’t, aren’t'],
  [/\b19 times in 20\b/i, 'about'],
  [/\bwhere nothing is said\b|\bwhere nothing was said\b/i, 'usual'],
  [/\bmake ill\b/i, 'make people ill'],
  [/\bby no means\b|\bfor want of\b|\bthat of yours\b/i, 'plain words'],
  [/\bCaution: /, 'the mark alone'],
]

/** Words of where a number comes from, which stand one question deeper. */
export const PROVENANCE =
  /\((?:from memory|derived|common practice|no measured figure)[^)]*\)|19 times in 20|please check/i
