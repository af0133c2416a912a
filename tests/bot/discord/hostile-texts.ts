/** Texts that would do something if they were not taken as texts. */
export const HOSTILE: readonly string[] = [
  '@everyone @here <@123456789012345678> <@!123456789012345678> <@&123456789012345678> <#123456789012345678>',
  '</plan:123456789012345678> <id:customize> <t:0:R> <:lemon:123456789012345678> <a:lemon:123456789012345678> :lemon:',
  '**bold** *slanted* __under__ ~~gone~~ ||spoiler|| `code` ```block```',
  '# heading',
  '-# small',
  '> quote',
  '>>> all of it',
  '- item',
  '* item',
  '+ item',
  '1. item',
  '  12) item',
  '[free lemons](https://example.org/a_b_c) <https://example.org> https://example.org/*x* http://[::1]/',
  '\\*already escaped\\* \\\\ \\',
  '¯\\_(ツ)_/¯',
  "'; DROP TABLE jars; -- $(rm -rf /) `id` && curl http://127.0.0.1 | sh",
  '{"__proto__": null} \u0024{process.env} %s %n <script>alert(1)</script> &lt;',
]

/** What is hidden or turned round in them is gone when they are shown. */
export const HIDING: readonly (readonly [typed: string, shown: string])[] = [
  ['le\u200bmon', 'lemon'],
  ['\ufeffle\u2060mon\u00ad', 'lemon'],
  ['le\u200dmon le\u200cmon', 'lemon lemon'],
  ['abc \u202egnol si siht\u202c', 'abc gnol si siht'],
  ['\u2066isolated\u2069 \u200f\u061c', 'isolated '],
  ['half \ud83c of one', 'half  of one'],
  ['one\ntwo\r\nthree\tfour', 'one two three four'],
  ['bell\u0007 \u001b[31mred', 'bell [31mred'],
  ['\ufff9lemon\ufffanomel\ufffb', 'lemonnomel'],
  ['hidden \u{e0068}\u{e0069}\u{e007f}', 'hidden '],
  ['day \ufdd01796817600:D\ufdd1', 'day 1796817600:D'],
]

/** Written with characters that show nothing by themselves, and as they are typed. */
export const WHOLE: readonly string[] = [
  '👩🏽‍🌾 👨‍👩‍👧‍👦 🏳️‍🌈 🏴‍☠️ ❤️‍🔥 👁️‍🗨️',
  '🏴\u{e0067}\u{e0062}\u{e0065}\u{e006e}\u{e0067}\u{e007f} 1️⃣ ☀️ 🇮🇹',
  'می\u200cخواهم',
  'क्\u200dष क्\u200cष',
  'ශ්\u200dරී',
  'לימון ليمون レモン 柠檬 葛\u{e0100}',
  'e\u0301 ğ ß ﬁ',
]
