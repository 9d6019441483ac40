import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { SIGNATURE_FILE, signatureFile } from '../../scripts/signature-file.js';
import { program } from '../support/exported.js';
import { root } from '../support/repo.js';

it('has the signatures that follow from the types: if not, npm run signatures', () => {
  expect(readFileSync(`${root}/src/${SIGNATURE_FILE}`, 'utf8')).toBe(signatureFile(program));
});
