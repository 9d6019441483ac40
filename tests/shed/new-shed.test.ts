import { type NewShed, newShed, readingsToFill, readShed, triage } from 'crankwright/shed';
import { newSheet, readSheet } from 'crankwright/sheet';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { refusal } from '../quantities/refusal.js';
import { plainShed } from './sheds.js';

const answers: NewShed = {
  name: 'pump set',
  units: 'inch',
  cylinders: 2,
  mains: 2,
  rodJournal: '1.6245 in to 1.6250 in',
  mainJournal: '1.9995 to 2.0000',
  bore: '3 in – 3.0005 in',
  cores: 2,
};

describe('newShed', () => {
  it('is read as it is, whatever the counts, and nothing of it counts as good', () => {
    const count = fc.integer({ min: 0, max: 6 });
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 8 }), count, count, (cylinders, mains, cores) => {
        const { mainJournal, ...others } = answers;
        const main = mains > 0 && mainJournal !== undefined ? { mainJournal } : {};
        const file = newShed({ ...others, ...main, cylinders, mains, cores });
        const csv = readingsToFill(file);
        const shed = readShed(JSON.stringify(file), csv);
        expect(shed.blocks?.length).toBe(cores);
        const measured = triage(shed).parts.filter(({ section }) =>
          ['blocks', 'crankshafts', 'rods'].includes(section),
        );
        expect(measured.filter(({ disposition }) => disposition !== 'undecided')).toEqual([]);
      }),
      { numRuns: 25 },
    );
  });

  it('names in its notes the fields for what its owner knows without measuring', () => {
    const notes = (newShed(answers) as { readonly notes: readonly string[] }).notes.join(' ');
    for (const field of ['cores', 'condition', 'lacks', 'marks', 'otherParts', 'alsoNeeds']) {
      expect(notes).toContain(field);
    }
  });

  it('takes sizes with or without units, as the bench writes them', () => {
    const { mainJournal: _, ...rolling } = answers;
    const rodJournal = (text: string, units: NewShed['units'] = 'inch') => {
      const bore = units === 'inch' ? answers.bore : '76 mm';
      const { engine } = newShed({ ...rolling, mains: 0, units, rodJournal: text, bore });
      return (engine as { readonly rodJournals: { readonly standard: object } }).rodJournals
        .standard;
    };
    const both = { min: '1.6245 in', max: '1.6250 in' };
    for (const text of [
      '1.6245 to 1.6250',
      '1.6245 in to 1.6250 in',
      ' 1.6245 – 1.6250 in',
      '1.6245 - 1.6250',
    ]) {
      expect(rodJournal(text)).toEqual(both);
    }
    expect(rodJournal('41.985 to 42', 'metric')).toEqual({ min: '41.985 mm', max: '42 mm' });
    expect(rodJournal('2-1/8 in')).toEqual({ min: '2-1/8 in', max: '2-1/8 in' });
  });

  it.each<[string, Partial<Record<keyof NewShed, unknown>>]>([
    ['answers.name', { name: ' ' }],
    ['answers.units', { units: 'si' }],
    ['answers.cylinders', { cylinders: 0 }],
    ['answers.cylinders', { cylinders: 1e9 }],
    ['answers.mains', { mains: -1 }],
    ['answers.mainJournal', { mainJournal: undefined }],
    ['answers.mainJournal', { mains: 0 }],
    ['answers.rodJournal', { rodJournal: '1.6250 to 1.6245' }],
    ['answers.rodJournal', { rodJournal: '1 to 2 to 3' }],
    ['answers.bore', { bore: '3 kg' }],
    ['answers.bore', { bore: '30000 in' }],
    ['answers.lubrication', { lubrication: 'drip' }],
    ['answers.cores', { cores: 27 }],
    ['answers.core', { core: 2 } as object],
  ])('refuses %s: %j', (parameter, wrong) => {
    expect(refusal(() => newShed({ ...answers, ...wrong } as NewShed)).parameter).toBe(parameter);
  });
});

describe('readingsToFill', () => {
  it('asks for nothing that is measured', () => {
    const rows = readingsToFill(plainShed()).split('\n');
    expect(rows[0]).toMatch(/^part,feature,station \[in\],/);
    expect(rows.filter((row) => /,cylinder 1,/.test(row))).toEqual([]);
  });

  it('is read once it is filled in', () => {
    const file = newShed({ ...answers, cores: 1 });
    const rows = readingsToFill(file)
      .split('\n')
      .filter((row) => row.startsWith('part,') || row.startsWith('rods A,rod 1,'));
    const [header = '', first = ''] = rows;
    const filled = `${header}\n${first}1.7507\n`;
    const housing = readShed(file, filled).rods?.[0]?.rods?.[0];
    // 1.7507 in is 44.46778 mm.
    expect(JSON.stringify(housing)).toMatch(/0\.0444677/);
  });

  it('refuses what is no shed', () => {
    expect(refusal(() => readingsToFill('[]')).parameter).toBe('shed');
  });
});

describe('newSheet', () => {
  it('is read as it is, with no size but the name, and refuses a wrong one', () => {
    const { name, units, cylinders, mains, bore } = answers;
    const least = { name, units, cylinders, mains };
    expect(readSheet(JSON.stringify(newSheet(least)))).toMatchObject({ engine: 'pump set' });
    expect(newSheet({ ...least, bore })).toMatchObject({
      bores: { standard: { min: '3 in', max: '3.0005 in' } },
    });
    expect(refusal(() => newSheet({ ...least, bore: '' })).parameter).toBe('answers.bore');
    expect(refusal(() => newSheet({ ...least, cylinders: 1.5 })).parameter).toBe(
      'answers.cylinders',
    );
    expect(refusal(() => newSheet({ ...least, cores: 2 } as never)).parameter).toBe(
      'answers.cores',
    );
  });
});
