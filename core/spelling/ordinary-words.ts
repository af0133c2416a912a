/** Good plants and everyday words one or two letters away from a refused name, in the words that names are compared by. */
export const ORDINARY: ReadonlySet<string> = new Set(
  (
    'sake riper laurea figlio figlia orage orages matura maturo mature fraggola sorella sorelle sorellina ethanol capelli cocker ragazzino ragazzina calcium moonshine nipotina nipotino nipotini gallina galline sanguinare grounds elderberry scoppia quill quills squillo squilli fischio fischi rischio canada voglio doppio natura shake stake saving vicino basso passo rosso tasse acero acorn minestra finestra ginestrino bayberry barberry ' +
    'bayberries barberries juneberry juneberries pansy pansies eisenkraut holunderblute holunderbluten robinienblute ' +
    'cooker kirschen mispeln sapin dewberry dewberries wineberry wineberries chokeberry chokeberries honeyberry honeyberries ' +
    'robinienbluten lattich esskastanie esskastanien edelkastanie weinbeere weinbeeren'
  ).split(' '),
)

/** Words of two or three letters that say something of what stands beside them: `are the cherries bad` is no slip of a cherry bay. */
export const SHORT_ORDINARY: ReadonlySet<string> = new Set(
  'bad bag bar bat boy bud but buy can cup cut day fit for get got has hat hot lid lot may men met mix pan pay pot pry put rub say set sit tin too top try way'.split(
    ' ',
  ),
)
