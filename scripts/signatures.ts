// Writes what every function takes and gives, from its types.
import { writeFileSync } from 'node:fs';
import { SIGNATURE_FILE, signatureFile } from './signature-file.js';

writeFileSync(new URL(`../src/${SIGNATURE_FILE}`, import.meta.url), signatureFile());
