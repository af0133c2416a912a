/** Another thing to do is no part of a name: `call the sloe mild and make the plum again`. */
export const NEXT_DEED =
  /[\s,;]+(?:and|then|and then|e|poi|e poi)\s+(?:make|start|plan|shake|strain|filter|bottle|sweeten|remind|nudge|show|tell|print|put|add|open|call|rename|begin|get (?:it|that|this|things)|set (?:it|that|this)|off we go|lets|let['’]s|go|log|save|record|inizia\p{L}*|avvia\p{L}*|comincia\p{L}*|parti\p{L}*|fallo|falla|mettil[oa]|fai|rifai|mostra|filtra|imbottiglia|ricordami|chiama|stampa)\b.*$/iu

/** All that a name is told by: it is what follows, to the end. */
const CALLED: readonly RegExp[] = [
  /\b(?:to|should|shall|must|will|ought to) be (?:called|named|known as)\s+(.+)$/i,
  /\b(?:from (?:now|today|tonight)(?: on(?:wards)?)?|as of (?:now|today)|da (?:ora|oggi)|d['’]?ora in (?:poi|avanti))\b.*?(?:\b(?:is|are|e)|è|['’]s) (?:called|named|known as|chiamat[oa])\b\s*(.*)$/i,
  /(?:\b(?:is|are)|['’]s) (?:called|named)\s+(.+?\s+from (?:now|today|tonight)\b.*)$/i,
  /\b(?:is now|are now|is to be|are to be) (?:called|named|known as)\s+(.+)$/i,
  /\b(?:re-?name|name|call)(?:d|ed)? (?:it|this|that|them)(?: one| jar)?(?: to| as)?\s+(.+)$/i,
  /\b(?:re-?naming|naming|calling) (?:it|this|that|them)(?: one| jar)?\s+(.+)$/i,
  /\b(?:(?:ri)?(?:chiama|nomina)l[oa]|(?:l[oaei]|si) chiam(?:o|a|iamo|ano|erà|era))\s+(?:ora |adesso )?(.+)$/i,
  /\b(?:goes|go|going) by(?: the name(?: of)?)?\s+(.+)$/i,
  /\b(?:known as)\s+(.+)$/i,
  // `Lemon is a dull name, make it sunshine`.
  /\bname\b[^.?]*[,;.-]\s*(?:so )?(?:let s |lets |let’s |let's )?(?:make|have|try) (?:it|that)(?: be)?\s+(.+)$/i,
  /\bname\b(?:\s+(?:of|for)\s+(?:\S+\s+){1,3}|\s+)to\s+(.+)$/i,
]

/** `Half a bag of lemons, call it 12, and 750 ml of brandy`: how many there are. */
const COUNTED = /^(?:about |say )?\d+(?:[.,]\d+)?(?: ?(?:g|kg|ml|l|lb|oz|kilos?|litres?|of them))?(?:[,.;]|$| and \d)/i

/** `Call it 910 ml`: so much there is, and nothing is named. */
const AMOUNT =
  /^(?:about |around |roughly |an? (?:even |round )?)?\d[\d.,]*\s?(?:ml|cl|dl|l|lit(?:er|re)s?|litri|fl\.? ?oz|oz|ounces|cups?|pints?|quarts?|g|kg|grams?|lbs?|%|percent|per cent|proof|days|weeks|bottles)(?!\p{L})/iu

/** The name that something is given, as it was typed, and where it begins; null where none is. */
export function newNameAt(text: string): { readonly text: string; readonly at: number } | null {
  for (const pattern of CALLED) {
    const name = pattern.exec(text)?.[1]
    if (name !== undefined && !COUNTED.test(name) && !AMOUNT.test(name))
      return { text: name, at: text.length - name.length }
  }
  return null
}

/** The name of a jar that a part of another went into: `300 ml into a jar called cloudy`. */
export function partNameAt(text: string): { readonly text: string; readonly at: number } | null {
  const name = /\b(?:called|named|chiamat[oa]|di nome|aside as|off as|apart as)\s+(.+)$/i.exec(text)?.[1]
  return name === undefined ? null : { text: name, at: text.length - name.length }
}
