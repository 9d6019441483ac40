import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { HAPPENINGS } from '../../src/reading/index.js';
import { consequenceOf, faultsOf, SURFACE_FAULTS } from '../../src/shed/faults.js';
import { TESTED_FOR } from '../../src/shed/history.js';
import { SECTIONS, type Section } from '../../src/shed/sections.js';
import { WORKS } from '../../src/shed/works.js';

const guide = readFileSync(new URL('../../docs/shed-file.md', import.meta.url), 'utf8');
/** The cells of every row of every table. */
const rows = guide
  .split('\n')
  .filter((line) => line.startsWith('|'))
  .map((line) => line.split('|').map((cell) => cell.trim()));
const faultsIn = (cell: string) => [...cell.matchAll(/`([a-z-]+)`/g)].map(([, fault]) => fault);

describe('the guide to the shed file', () => {
  const table = rows.slice(rows.findIndex(([, heading]) => heading === 'section'));
  const rowOf = (name: string) => table.find((cells) => cells[1] === name) ?? [];

  it.each(SECTIONS)('says what each fault of %s means', (section: Section) => {
    const [, , scrap = '', machine = '', repair = ''] = rowOf(`\`${section}\``);
    const told = (...kinds: readonly string[]) =>
      faultsOf(section).filter((fault) => kinds.includes(consequenceOf(section, fault).kind));
    expect(faultsIn(scrap)).toEqual(told('scrap'));
    expect(faultsIn(machine)).toEqual(told('machine'));
    expect(faultsIn(repair).toSorted()).toEqual(told('repair', 'mend').toSorted());
    for (const fault of told('repair')) {
      const consequence = consequenceOf(section, fault);
      expect(repair).toContain(consequence.kind === 'repair' ? consequence.work : '');
    }
  });

  it('says what spoils one journal or bore', () => {
    expect(faultsIn(rowOf('a journal, bore')[3] ?? '')).toEqual(SURFACE_FAULTS);
  });

  it('names every accident, and what a part can be tested for', () => {
    for (const word of [...HAPPENINGS, ...TESTED_FOR]) expect(guide).toContain(`\`${word}\``);
  });

  it('names every section, and every work', () => {
    for (const section of SECTIONS) expect(guide).toContain(`| \`${section}\``);
    for (const work of WORKS) expect(guide.replace(/\s+/g, ' ')).toContain(`\`${work}\``);
  });
});
