import { printable } from './text.js';

/** Text as it stands in XML and HTML, between tags or in a quoted attribute. */
export const escapedMarkup = (text: string): string =>
  printable(text)
    // Half a character and what is no character may not stand in XML, however it is escaped.
    .replace(/[\p{Cs}\ufffe\uffff]/gu, '\ufffd')
    .replaceAll('&', '&amp;')
    .replaceAll('<', '&lt;')
    .replaceAll('>', '&gt;')
    .replaceAll('"', '&quot;');
