import type { Basis } from '../judging/index.js';

const published = (source: string): Basis => ({
  kind: 'published',
  source,
  forAnotherEngine: true,
});

/** Rods that are scrapped. */
export const SCRAP_ROD: Basis = /* @__PURE__ */ published(
  'TM 9-2815-202-34, section 6-34: a rod that is bent, was overheated or had a bearing failure is scrapped; the others are tested with magnetic particles',
);

/** Crankshafts that are replaced for heat. */
export const OVERHEATED_CRANKSHAFT: Basis = /* @__PURE__ */ published(
  'TM 9-2815-255-24: a discoloured or overheated crankshaft is replaced, as its heat treatment has probably been destroyed',
);
