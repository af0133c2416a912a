/** Zones south of the equator, by their names in the IANA data. From memory. */
const SOUTH =
  /^(?:Australia|Antarctica)\/|^America\/(?:Argentina\/|Buenos_Aires|Catamarca|Cordoba|Jujuy|Mendoza|Rosario|Asuncion|Montevideo|Santiago|Punta_Arenas|La_Paz|Lima|Sao_Paulo|Bahia|Recife|Maceio|Fortaleza|Belem|Santarem|Araguaina|Cuiaba|Campo_Grande|Porto_Velho|Rio_Branco|Porto_Acre|Eirunepe|Manaus|Noronha|Coyhaique)|^Africa\/(?:Johannesburg|Harare|Maputo|Lusaka|Gaborone|Maseru|Mbabane|Windhoek|Luanda|Lubumbashi|Blantyre|Bujumbura|Kigali|Dar_es_Salaam)|^Indian\/(?:Antananarivo|Mauritius|Reunion|Mayotte|Comoro)|^Pacific\/(?:Auckland|Chatham|Fiji|Tongatapu|Apia|Noumea|Norfolk|Port_Moresby|Easter|Tahiti|Pitcairn|Rarotonga|Efate)|^Atlantic\/(?:Stanley|South_Georgia|St_Helena)|^(?:NZ|NZ-CHAT|Chile\/|Brazil\/)/

/** Whether it is summer in January there; where a zone names no place, the north is meant. */
export const isSouthern = (zone: string): boolean => SOUTH.test(zone)

/** The month of the north in which the same is ripe as in this one there, 1 to 12. */
export const northernMonth = (month: number, isSouth: boolean): number => (isSouth ? ((month + 5) % 12) + 1 : month)
