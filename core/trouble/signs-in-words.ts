/** Fuel, thinner and spirit nobody may drink; turpentine is also what old citrus oil smells of. */
const FUEL =
  /\b(?:gasoline|gas(?=$|[.!?]| (?:can|station|pump|tank))|petrol|diesel|kerosene|paraffin|lighter fluid|(?:paint )?thinners?|white spirit|mineral spirits|methylated(?: spirits?)?|meths|denatured|surgical spirit|rubbing alcohol|isopropyl|(?:alcol |spirito )?denaturato|alcol rosa|benzina|gasolio|cherosene|petrolio|diluente)(?!\p{L})/iu

/** What a spoiled ferment or a fake spirit smells of. */
const VARNISH =
  /\b(?:(?:nail|polish|varnish) (?:polish|varnish|remover|salon|lacquer|bar)|(?:manicur|pedicur)\p{L}*|nails done|acetone|(?:super)?glue|uhu|airplane cement|pear drops?|varnish|lacquer|smalto|unghie|vernice|colla|vinilica)(?!\p{L})/iu

/** What burns the tongue is said to taste of petrol: it is fuel where it smells so. */
const SMELL = /\b(?:smel[lt]|stink|stank|reek|whiff|odou?r|puzz|odor|annus)|\bsa(?:peva)? di\b/iu

/** What has rotted: never an egg, whose smell has other causes. */
const ROT =
  /\b(?:rot|rotting|rotted|rotten(?! eggs?\b)|putrid|putrefied|decay(?:ed|ing)?|sewage|sewers?|pond(?: water)?|swamp|stagnant|carrion|corpse|manure|vomit|something (?:has |had |that )?died|dead (?:animal|mouse|rat|fish|body|thing)s?|marci(?:o|ume)|putrido|fogna|fogne|stagno|palude|stagnante|carogna|vomito|letame)(?!\p{L})/iu

/** Whether a text tells of a smell of rot, a pond or sewage. */
export const smellsOfRot = (text: string): boolean => ROT.test(text) && SMELL.test(text)

/** The words for a solvent that a text names. */
export const namesVarnish = (text: string): boolean => VARNISH.test(text)
export const namesFuel = (text: string): boolean => FUEL.test(text)

/** Whether a text tells of a smell of solvent: `smelt of white spirit`, not `glued the label on`. */
export const smellsOfSolvent = (text: string): boolean =>
  text.split(/[,.;:!?\n]/).some((clause) => SMELL.test(clause) && (namesVarnish(clause) || namesFuel(clause)))

/** What the name of a smell itself answers, so that it is not asked. */
export function signOfSolvent(text: string): 'varnish' | 'fuel' | null {
  if (namesVarnish(text)) return 'varnish'
  return namesFuel(text) && SMELL.test(text) ? 'fuel' : null
}
