import { meaning } from '../reading/meaning.ts';

/** Papers that somebody has to write, keep or show: a "cleaning plan" that goes on as "cleaning" is lost. */
export const DOCUMENTS = new Set(
  `drawing certificate record log logbook diary plan policy procedure report register manual statement receipt ticket photograph
agreement schedule inventory documentation list sheet checklist permit licence approval notice invoice letter warranty guarantee`
    .split(/\s+/)
    .map(meaning),
);

/** Materials of many trades by their plain names. */
export const MATERIALS = new Set(
  `steel iron copper brass bronze zinc aluminium tin gold silver timber wood oak pine plywood hardboard plastic polythene polypropylene
rubber neoprene glass stone granite slate marble sand gravel clay concrete cement mortar grout plaster gypsum brick tile asphalt bitumen
felt geotextile membrane wool cotton linen leather cardboard foam silicone resin epoxy enamel porcelain ceramic paint primer varnish
sealant adhesive glue grease solder oil fuel bleach detergent soap alcohol chlorine mulch turf topsoil peat compost straw`
    .split(/\s+/)
    .map(meaning),
);
