import { actionsFrom, inspect, readSheet, report } from 'crankwright/sheet';
import { describe, expect, it } from 'vitest';
import { plainAssembly } from '../shed/assemblies.js';
import { changed, type Json } from './sheets.js';

const sheet = (assembly: Json, more: object = {}) =>
  readSheet({
    version: 1,
    engine: 'pump set',
    units: 'inch',
    bores: { standard: { min: '3.0000 in', max: '3.0005 in' }, stroke: '3.25 in' },
    assembly,
    ...more,
  });
const reported = (assembly: Json, more: object = {}) => report(inspect(sheet(assembly, more)));
const flowing = (assembly: Json, more: object = {}) =>
  reported(assembly, more).replace(/\s+/g, ' ');

describe('the report of what an engine is set to', () => {
  const text = reported(plainAssembly());
  const flat = text.replace(/\s+/g, ' ');

  it('has a section for each topic, and none for what the sheet does not tell', () => {
    const topics = [
      'TORQUE',
      'LASH AND SPRINGS TO SET',
      'RINGS IN THEIR GROOVES',
      'FITS',
      'COMPRESSION BY SIZES',
      'TIMING',
      'DIPPERS',
    ];
    const headings = (of: string) =>
      of.split('\n').filter((_, i, lines) => /^-+$/.test(lines[i + 1] ?? ''));
    expect(headings(text).filter((heading) => topics.includes(heading))).toEqual(topics);
    expect(headings(reported({})).filter((heading) => topics.includes(heading))).toEqual([]);
  });

  it('fits the page and has no hole', () => {
    for (const line of text.split('\n')) expect(line.length).toBeLessThanOrEqual(96);
    expect(text).not.toMatch(/undefined|NaN|Infinity|\[object/);
  });

  it('tells the torque, what it does to the bolt, and where none is known', () => {
    expect(flat).toMatch(
      /Rod caps: 14\.0 to 18\.0 lbf·ft at the fastener, thread and face oiled \[\d+\]/,
    );
    expect(flat).toContain('the nut factor may be 0.1 to 0.26');
    expect(flat).toMatch(/highest preload \d+\.\d lbf: within the limit/);
    expect(flat).toContain('Flywheel: no torque');
    // 360 lbf·in on the most slippery thread: 360 / (0.10 * 0.3125) = 11 520 lbf, over the proof load of some 7000. Told once.
    const over = changed(plainAssembly(), { 'fasteners.rodCaps.torque': '30 lbf ft' });
    const [todo = '', topics = ''] = flowing(over).split(/(?= TORQUE )/);
    expect(todo.match(/highest preload/g)).toHaveLength(1);
    expect(topics.match(/highest preload/g)).toHaveLength(1);
  });

  it('tells lash, springs and rings', () => {
    expect(flat).toMatch(/inlet: 0\.0070 to 0\.0090 in, set cold \[\d+\]/);
    expect(flat).toMatch(/exhaust, spring with the valve closed: 34\.0 to 40\.0 lbf at 1\.1500 in/);
    expect(flat).toMatch(/exhaust, spring with the valve open: at least 80\.0 lbf at 0\.8500 in/);
    expect(flat).toMatch(/side clearance at most 0\.0035 in/);
    expect(flat).toMatch(/a ring pushed right in lies below its land by at least 0\.0050 in/);
    const alone = changed(plainAssembly(), { 'rings.sideClearance': undefined });
    expect(flowing(alone)).not.toContain('side clearance');
    const side = changed(plainAssembly(), { 'rings.backClearance': undefined });
    expect(flowing(side)).not.toContain('pushed right in');
    const springAlone = changed(plainAssembly(), { 'valves.exhaust.lash': undefined });
    expect(flowing(springAlone)).not.toContain('exhaust: ');
  });

  it('tells compression and what its test is judged by', () => {
    expect(flat).toMatch(
      /compression ratio \d\.\d\d by the spaces given|compression ratio \d\.\d\d to/,
    );
    expect(flat).toContain('Compression test. The readings must keep to:');
    expect(flat).toContain('lowest at least 75 % of the highest');
  });

  it('tells the timing, and what kicks back as a caution', () => {
    expect(flat).toContain('inlet opens: 5.0 deg ± 2.0 deg before top dead centre');
    expect(flat).not.toContain('CAUTION');
    const early = changed(plainAssembly(), { 'timing.spark.lag': '0 deg' });
    expect(flowing(early)).toContain('CAUTION: The spark for starting comes too early');
  });

  it('tells how the dippers run', () => {
    expect(flat).toContain('depth in the oil by the sizes of the file 0.2500 to 0.3750 in');
    expect(flat).toMatch(/dip of the dipper 0\.3750 in: within the limit of 0\.4000 in/);
  });
});

describe('fits of a sheet', () => {
  const pinFit = (hole?: string): Json => ({
    fits: [
      {
        name: 'pin in its rod',
        clearance: { min: '0.0003 in', max: '0.0008 in', source: 'sheet 3' },
        ...(hole !== undefined && { hole, shaft: '0.7500 in' }),
      },
    ],
  });
  const accurate = { instruments: { boreGauge: '±0.0001 in', micrometer: '±0.0001 in' } };

  it('that hold are told and left', () => {
    const inspection = inspect(sheet(pinFit('0.7505 in')));
    expect(inspection.assembly?.fits[0]?.finding?.verdict).toBe('within');
    expect(flowing(pinFit('0.7505 in'))).toContain('pin in its rod: clearance 0.0005 in: within');
    expect(actionsFrom(inspection)).toEqual([]);
  });

  it('that fail say by how much, and what to do', () => {
    // 0.7520 - 0.7500 = 2.0 thou, 1.2 over 0.8.
    const said = flowing(pinFit('0.7520 in'));
    expect(said).toContain(
      'pin in its rod: clearance 0.0020 in: 0.0012 in above the limit of 0.0008 in',
    );
    expect(said).toMatch(/1\. \[ \] [^[]*pin in its rod/);
  });

  it('that the readings do not decide are measured again', () => {
    // 0.7508 - 0.7500 = 0.8 thou at its limit, both read to 0.1 thou.
    const inspection = inspect(sheet(pinFit('0.7508 in'), accurate));
    expect(inspection.assembly?.fits[0]?.finding?.verdict).toBe('undecided');
    expect(inspection.unsettled.map(({ part }) => part)).toEqual(['pin in its rod']);
  });

  it('that were not measured are told so', () => {
    expect(flowing(pinFit())).toMatch(
      /pin in its rod: not measured; clearance 0\.0003 to 0\.0008 in is wanted/,
    );
    expect(flowing(pinFit())).toMatch(/Not measured, so not judged: [^.]*pin in its rod/);
    expect(flowing(pinFit('0.7505 in'))).not.toMatch(
      /Not measured, so not judged: [^.]*pin in its rod/,
    );
  });
});
