import { actionsFrom, describeAction, inspect, readSheet, report } from 'crankwright/sheet';
import { describe, expect, it } from 'vitest';
import { type Json, spoilt } from '../sheet/sheets.js';

type Changes = Readonly<Record<string, Json | undefined>>;
/** The pump set in clean oil under a steady load, with a shell whose metal is known. */
const STEADY: Changes = {
  'oil.sample': undefined,
  'oil.leak': undefined,
  'oil.bearing.bigEnd': undefined,
  'oil.bearing.material': 'tin babbitt',
};
const inspected = (changes: Changes) => inspect(readSheet(spoilt({ ...STEADY, ...changes })));
/** One line of the section on oil. */
const line = (changes: Changes, beginning: 'Film' | 'Bearing' | 'What to do') => {
  const text = report(inspected(changes)).replace(/\n {2,}/g, ' ');
  return text.split('\n').find((each) => each.startsWith(beginning)) ?? '';
};
const first = (changes: Changes) => {
  const [action] = actionsFrom(inspected(changes));
  return action ? describeAction(action, { units: 'inch' })[0] : '';
};

describe('a bearing in oil that comes in at 330 °F', () => {
  // Babbitt stands 150 °C, 302 °F. A film may be thick enough and the metal still melt away under it.
  const hot = { 'oil.bearing.inlet': '330 °F', 'oil.bearing.load': '100 lbf' };
  it('is not accepted, because of its heat, and is not run', () => {
    expect(inspected(hot).oil?.film?.finding.regime).toBe('full');
    expect(line(hot, 'Bearing')).toMatch(
      /rod 2 is not accepted: film temperature 3[3-9]\d\.\d °F: \d+\.\d °F above the limit of 302\.0 °F/,
    );
    expect(first(hot)).toMatch(/^DO NOT RUN: rod 2 is not fit to run: film temperature/);
    expect(line(hot, 'What to do')).toBe(
      'What to do: do not run the engine, put the bearing right before it runs again.',
    );
  });
});

describe('8000 lbf on babbitt', () => {
  // 8000 lbf on 1.5948 in² are 5016 psi; babbitt carries 800 to 1500 as a mean, 2500 at a peak.
  const pressed = {
    'oil.bearing.load': '8000 lbf',
    'oil.bearing.speed': '5000 rpm',
    'oil.bearing.inlet': '104 °F',
    'oil.bearing.roughness': { journal: '0.05 µm', shell: '0.05 µm' },
  };
  it('is not accepted, because the metal does not carry it, however thick the film', () => {
    expect(inspected(pressed).oil?.film?.finding.regime).toBe('full');
    expect(line(pressed, 'Bearing')).toMatch(/rod 2 is not accepted: mean pressure 501\d\.\d psi/);
    expect(first(pressed)).toMatch(/^DO NOT RUN: rod 2 is not fit to run: mean pressure/);
  });
});

describe('a shell of a metal that nobody named', () => {
  it('is not accepted: material unknown', () => {
    const nameless = { 'oil.bearing.material': undefined };
    expect(line(nameless, 'Bearing')).toContain('rod 2 is not accepted: material unknown');
    expect(inspected(nameless).oil?.film?.acceptance.outcome).toBe('not accepted');
  });
});

describe('a clearance typed in against one that was measured', () => {
  const rod1 = { 'oil.bearing.name': 'rod 1', 'oil.bearing.journal': '1.6047 in' };
  it('goes by the measured one, at its worse end, and says that the two differ', () => {
    const found = line({ ...rod1, 'oil.bearing.clearance': '1.2 thou' }, 'Film');
    expect(found).toContain(
      'rod 1 as found with "rod 20 under, used" (the worse end of its clearance, 0.0020 to 0.0024 in, not the 0.0012 in typed in)',
    );
    // The tight clearance that was typed in would show a film of its own.
    const thickness = (clearance: string) =>
      inspected({ ...rod1, 'oil.bearing.clearance': clearance }).oil?.film?.now.film.film;
    expect(thickness('1.2 thou')).toBe(thickness('2.2 thou'));
  });
  it('says of a bearing that is still to be ground that it is not the one found', () => {
    expect(line({}, 'Film')).toContain(
      'rod 2 as it will be with "rod 30 under" (the worse end of its clearance, 0.0017 to 0.0025 in; as found it has 0.0225 to 0.0241 in, so this film is not that of the bearing as it is)',
    );
  });
  it('says of a journal that is neither that its clearance was typed in', () => {
    const other = { 'oil.bearing.journal': '1.6248 in' };
    expect(line(other, 'Film')).toContain(
      'rod 2 with the clearance typed in, 0.0018 in (as found it has 0.0225 to 0.0241 in, so this film is not that of the bearing as it is)',
    );
  });
});

describe('a splash that nobody measured', () => {
  const film = line({}, 'Film');
  it('puts the level of the oil before every film figure', () => {
    expect(film).toMatch(
      /^Film: The oil level matters more than any figure here: keep it at its mark/,
    );
  });
  it('gives every film figure for a bearing that is kept flooded, and accepts none', () => {
    expect(film).toMatch(/If kept flooded, at rod 2 .* µin/);
    expect(line({}, 'Bearing')).toContain('oil supply (give the oil that was measured');
    expect(inspected({}).oil?.film?.acceptance.outcome).not.toBe('accepted');
  });
  it('is measured against what leaves the bearing', () => {
    const at = (measured: string) => ({ 'oil.bearing.supply': { by: 'splash', measured } });
    expect(line(at('20 mL/min'), 'Film')).toContain('and gets 20 mL/min: it starves');
    expect(first(at('20 mL/min'))).toMatch(/^DO NOT RUN: .*oil supply 20 mL\/min measured/);
    expect(line(at('300 mL/min'), 'Film')).not.toContain('If kept flooded');
  });
  it('is as unknown where the sheet names no supply at all', () => {
    const unnamed = { 'oil.bearing.supply': undefined };
    expect(line(unnamed, 'Film')).toContain('If kept flooded, at rod 2');
    expect(line(unnamed, 'Film')).not.toContain('oil level');
  });
});

describe('a big end whose masses are known', () => {
  it('is judged by its orbit, with the steady films beside it', () => {
    const { bigEnd } = (spoilt({}) as { oil: { bearing: { bigEnd: Json } } }).oil.bearing;
    const known = line({ 'oil.bearing.bigEnd': bigEnd }, 'Film');
    expect(known).toMatch(
      /µin at the thinnest of the orbit by the loads of the cycle, \d\.\d times the roughness/,
    );
    expect(known).toMatch(/steady, it would be .* under the mean load of .* under the most, /);
  });
});

describe('masses that no big end carries at its speed', () => {
  it('are refused together, as the force comes of all of them', () => {
    const { bigEnd } = (spoilt({}) as { oil: { bearing: { bigEnd: { [key: string]: Json } } } }).oil
      .bearing;
    const heavy = { 'oil.bearing.bigEnd': { ...bigEnd, pistonMass: '2000 kg' } };
    expect(() => inspected({ ...heavy, 'oil.bearing.speed': '40000 rpm' })).toThrow(
      expect.objectContaining({
        problems: [expect.objectContaining({ path: 'oil.bearing.bigEnd' })],
      }),
    );
  });
});

describe('a film between the two figures of the books', () => {
  // 3 in general, 5 where surfaces fit closely: below the stricter one it is not accepted, yet no wreck.
  const close = { 'oil.bearing.load': '400 lbf', 'oil.bearing.duty': 'closely fitted' };
  const rough = { 'oil.bearing.roughness': { journal: '1.1 µm', shell: '1.1 µm' } };
  it('is not accepted for closely fitted surfaces, but stops no engine', () => {
    const ratio = inspected({ ...close, ...rough }).oil?.film?.finding.finding.value ?? 0;
    expect(ratio).toBeGreaterThan(3);
    expect(ratio).toBeLessThan(5);
    expect(line({ ...close, ...rough }, 'Bearing')).toContain(
      'is not accepted: film over roughness',
    );
    expect(first({ ...close, ...rough })).not.toContain('DO NOT RUN: rod 2 is not fit');
  });
});

describe('a bearing of which everything is known and good', () => {
  it('is accepted, with the reasons', () => {
    const known = {
      'oil.bearing.load': '300 lbf',
      'oil.bearing.largestParticle': '2 µm',
      'oil.bearing.supply': { by: 'pump', measured: '400 mL/min' },
    };
    expect(line(known, 'Bearing')).toMatch(
      /rod 2 is accepted: mean pressure .* All this is under one steady load of 300\.0 lbf/,
    );
    expect(actionsFrom(inspected(known)).some(({ kind }) => kind === 'thin film')).toBe(false);
  });
});
