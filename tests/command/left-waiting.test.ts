import { newSheet } from 'crankwright/sheet';
import { describe, expect, it } from 'vitest';
import { captured } from './captured.js';

interface Place {
  name: string;
  journal?: { readings: Record<string, unknown> };
  housingBore?: unknown;
}

/** A new sheet of a twin, and what its x-rods wait with. */
function template(): Record<string, unknown> & { 'x-rods': [Place, Place] } {
  const file = newSheet({
    name: 'twin',
    units: 'inch',
    cylinders: 2,
    mains: 2,
    rodJournal: '1.6245 in to 1.6250 in',
  });
  return JSON.parse(JSON.stringify(file));
}

const reported = (sheet: unknown) => captured(['report'], { input: JSON.stringify(sheet) });

const filled = {
  unit: 'in',
  angles: ['0 deg', '60 deg'],
  stations: [0.25, 1],
  diameters: [
    [1.6248, 1.6248],
    [1.6247, 1.6247],
  ],
};

describe('what was filled in under a name that nothing reads', () => {
  it('is said beside the report, which is printed as ever', async () => {
    const sheet = template();
    sheet['x-rods'][0] = { name: 'rod 1', journal: { readings: filled }, housingBore: '1.7506 in' };
    const { code, out, err } = await reported(sheet);
    expect(code).toBe(0);
    expect(out).toContain('Nothing was measured yet.');
    expect(err).toBe(
      'crankwright: x-rods holds readings that nothing reads: take the x- from its name to have them judged\n',
    );
  });

  it('goes to the list that is read already, if there is one: two of one name would be a mistake', async () => {
    const sheet = template();
    const rod = (name: string) => ({
      name,
      journal: { readings: filled },
      housingBore: '1.7506 in',
    });
    sheet['rods'] = [rod('rod 1')];
    sheet['x-rods'] = [{ name: 'rod 1' }, rod('rod 2')];
    const { err } = await reported(sheet);
    expect(err).toBe('crankwright: x-rods holds readings that nothing reads: move them to rods\n');
  });

  it('may be one housing alone, or text with its unit', async () => {
    const housing = template();
    housing['x-rods'][1].housingBore = '1.7506 in';
    expect((await reported(housing)).err).toContain('x-rods holds readings');
    const text = template();
    const readings = { ...filled, stations: [null], diameters: [['1.6248 in', null]] };
    text['x-rods'][0].journal = { readings };
    expect((await reported(text)).err).toContain('x-rods holds readings');
  });

  it('is not what the sheet was written with, nor any other field of the owner', async () => {
    expect((await reported(template())).err).toBe('');
    const own = {
      ...template(),
      'x-rods': 'two of them bent',
      'x-pistons': [{ journal: { readings: filled } }],
    };
    expect((await reported(own)).err).toBe('');
    const noted = template();
    noted['x-rods'][0] = { ...noted['x-rods'][0], name: 'rod 1, 12 oz' };
    expect((await reported(noted)).err).toBe('');
  });
});
