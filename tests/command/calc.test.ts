import { describe, expect, it } from 'vitest';
import { captured } from './captured.js';

const sizes = '{housingBore: 2.251 inch, journal: 2.105 inch, shellWall: 62 thou}';
const calc = async (text: string, ...options: readonly string[]) => {
  const { code, out, err } = await captured(['calc', text, ...options]);
  return { code, out: out.trimEnd(), err: err.replace('crankwright: ', '').trimEnd() };
};

describe('crankwright calc', () => {
  it('tells a clearance in thou, the rule it breaks as a rule, and what explains it', async () => {
    const { out } = await calc(`clearance = oilClearance(${sizes})`);
    expect(out.split('\n')).toEqual([
      '22 thou: above 3.2 thou, by common practice (0.00075 to 0.0015 in of oil clearance for each inch of journal)',
      'ground journal, shells for a larger one? A step of 20 thou explains it: matching shells would leave 2 thou. Read journal and housing again, and the stamp on the shells.',
    ]);
  });

  // Exact factors: 1 in = 25.4 mm, 1 lbf = 0.45359237 × 9.80665 N, 1 ft = 0.3048 m; NIST SP 811.
  it.each([
    ['2 inch to mm', '50.8 mm'],
    ['2.1248 in to mm', '53.96992 mm'],
    // 18 * 1.3558179483 = 24.404723 and 1500 * 2π / 60 = 157.0796: what does not end soon is rounded.
    ['18 ft-lb to N·m', '24.405 N·m'],
    ['2 1/8" to mm', '53.975 mm'],
    ['10 min to s', '600 s'],
    ['60 ft/min to m/s', '0.3048 m/s'],
    ['185 °F to °C', '85 °C'],
    ['185 degrees F to degrees C', '85 °C'],
    ['sqrt(4 in^2)', '2.0000 in'],
    ['1500 rpm to rad/s', '157.08 rad/s'],
    ['1 US qt to mL', '946.352946 mL'],
    // 1 kgf is 9.80665 N: 45 of them on a cm² are 4412992.5 Pa, and 1 psi is 6894.757 Pa; 180 psi are 1241056.3 Pa.
    ['45 kg/cm^2 to psi', '640.05 psi'],
    ['45 kg/cm² to psi', '640.05 psi'],
    ['180 psi to kg/cm2', '12.655 kgf/cm²'],
    // 12 * 9.80665; 0.6 * 9.80665 N·m over 0.1129848 N·m.
    ['12 kgm to N m', '117.6798 N·m'],
    ['12 kg-m to N m', '117.6798 N·m'],
    ['60 kg-cm to lbf in', '52.078 lbf·in'],
    ['10 lbf ft to kgm', '1.3825 kgf·m'],
    // A length keeps a tenth of a thou, or 0.001 mm, however large it is: 1 / 25.4, 10000 / 3 and 1 / 0.3048 mm by hand.
    ['153.4 mm to in', '6.0394 in'],
    ['1 mm to in', '0.03937 in'],
    ['1 m to ft', '3.28084 ft'],
    ['393.70123 in to mm', '10000.011 mm'],
  ])('converts %s', async (text, expected) => {
    expect(await calc(text)).toEqual({ code: 0, out: expected, err: '' });
    // The long way, through mathjs, gives the same.
    expect((await calc(`x = 1; ${text}`)).out).toBe(expected);
  });

  it.each([
    ['8.5:1', '8.5'],

    ['{ratio: 9:2}.ratio', '4.5'],
    ['1:3', '[1, 2, 3]'],
    ['[5, 6, 7][2:3]', '[6, 7]'],
  ])('reads a ratio as people write it, and leaves what counts up: %s', async (text, expected) => {
    expect(await calc(text)).toEqual({ code: 0, out: expected, err: '' });
  });

  it.each([
    ['5% * 1 US qt', '0.05 US qt'],
    ['1 US qt / 4', '0.25 US qt'],
    ['1 US qt - 0.5 US qt', '0.5 US qt'],
    ['q = 1 US qt; q * 0.05 + 0.25 US qt', '0.3 US qt'],
    // A quart is 946.352946 mL.
    ['0.5 US qt + 473.176473 mL', '1 US qt'],
    // π / 4 * 3² * 3 / 2: a volume that a function gave is still one of an engine.
    ['sweptVolume({bore: 3 in, stroke: 3 in}) / 2', '10.603 in³'],
    ['1 US qt / 0', ''],
  ])('keeps the measure that a volume was typed in: %s', async (text, expected) => {
    expect((await calc(text)).out).toBe(expected);
    expect((await calc('5% * 1 L', '--units', 'metric')).out).toBe('50 mL');
  });

  it('tells what a function takes, and how to ask for it', async () => {
    const { code, out } = await calc('.about oilClearance', '--units', 'metric');
    expect(code).toBe(0);
    expect(out).toContain('oilClearance(sizes)');
    expect(out).toContain('housingBore  a length in mm');
    expect((await calc('help')).out).toContain('.about oilClearance tells what a function takes');
    expect((await calc('.help')).code).toBe(0);
    expect(await calc('.about oilClearanc')).toEqual({
      ...{ code: 2, out: '', err: 'oilClearanc: did you mean oilClearance?' },
    });
  });

  it('takes a line that was copied with the sign of the prompt', async () => {
    expect((await calc('> 1 in + 1 thou')).out).toBe('1.001 in');
  });

  it('reads a mixed number as one, and says so once', async () => {
    const { out, err } = await calc('a = 2-1/8 in\nb = 3-1/2 in\n"2-1/8 in"');
    expect(out).toBe('2.125 in\n3.5 in\n2-1/8 in');
    expect(err).toBe(
      'note: 2-1/8 is read as 2.125; for a difference, write it with spaces around the minus',
    );
  });

  it('takes temperatures from each other for a difference', async () => {
    expect((await calc('85 degC - 25 degC')).out).toBe('60 °C of difference');
    expect((await calc('(85 degC - 25 degC) to degF')).out).toBe('108 °F of difference');
    expect((await calc('20 degC + 18 fahrenheitDifference')).out).toBe('30 °C');
    expect((await calc('20 degC + 30 degC')).err).toContain('cannot be added to a temperature');
  });

  it.each([
    [sizes.replace('journal', 'jurnal'), 'jurnal: did you mean journal?'],
    [
      sizes.replace('2.105 inch', '2.105'),
      'journal: 2.105 has no unit; expected a length, for example 2.105 inch',
    ],
    [
      sizes.replace('2.105 inch', '20 N m'),
      'journal: 20 N·m is not a length; expected for example 2 inch',
    ],
    [
      sizes.replace('2.105 inch', '2.105 m'),
      // 3 mm / 25.4 = 0.1181 in, 1 m / 25.4 mm = 39.3701 in; what was typed stays.
      'journal: 2.105 m is outside 0.1181 in … 39.3701 in. Check the unit and the decimal point, e.g. 2.1248 inch.',
    ],
  ])('refuses %s in words', async (typed, expected) => {
    expect(await calc(`oilClearance(${typed})`)).toEqual({ code: 2, out: '', err: expected });
  });

  it.each([
    [
      `oilClearance(${sizes.replace('62 thou', '620 thou')})`,
      'Look at the decimal point of the shell wall first: 0.062 in, not 0.62 in, would go with',
    ],
    ['oilClearanc(1)', 'oilClearanc: did you mean oilClearance?'],
    // 13.2 % is 0.132 to mathjs: to name that number with the unit would be a hundred times too little.
    ['dilutionFinding(13.2 %)', 'for example 13.2 percentByVolume'],
    ['dilutionFinding(13.2)', 'for example 13.2 percentByVolume'],
    [
      'fuelInSump({leak: dripFlow({drops: 6, time: 1 min}), oil: 1 US qt, time: 12 h})',
      'leak: this is a span where one value belongs. Put in one end of it, .min or .max',
    ],
    [
      'boreAfterPressing({bushing: 1 in})',
      'bushing: 1 in is one size where several belong. It takes {outside, bore,',
    ],
    // 2 + 4/2 = 4.
    ['2-4/2 in', '2-4/2 in: 4/2 is not a fraction below one; write 4 in, or 2 in - 4/2 in'],
    ['2-1/0 in', '2-1/0 in: 1/0 is not a fraction below one'],
    ['2 in 1/8', '2 in 1/8: the fraction stands before the unit; write 2-1/8 in'],
    ['2" 1/8', 'write 2-1/8 in'],
    ['ringgap', 'there is no such name; ringGapAlongBore, ringGapHot and ringGapIn begin so'],
    ['1 qt to mL', 'qt: this may be a US or an imperial quart'],
    ['1/0', 'this has no finite value'],
    ['1e999 mm', 'this has no finite value'],
    ['sqrt(-1)', 'this has no real value'],
    ['evaluate("1")', 'evaluate is off here'],
    ['f = createUnit', 'createUnit is off here'],
    ['runout 3 thou', 'runout takes its sizes in brackets: runout([{angle: 30 degree, reading:'],
    ['oil clearance 2.251 2.105', 'it is one word, with its sizes in brackets: oilClearance({'],
    ['Oil Clearance', 'it is one word, with its sizes in brackets: oilClearance({'],
    ['ones(1000000000)', 'ones is off here'],
    ['0:1e308', '0:1e+308 lists too many numbers, at most 10000'],
    ['0:0.001:20', '0:20 lists too many numbers'],
    ["range('0:1e308')", 'type 0:1e308 without quotation marks'],
    ['simplify("x")', 'simplify is off here'],
    ['3 x 2 in', 'x: for times write *: 3 * 2 inch'],
    ['2.5 in x 3', 'x: for times write *: 2.5 inch * 3'],
    ['pressFit({hub: cast iron})', 'words stand in quotes, as "steel"'],
    ['2.125 in +- 0.0005 in', 'a size and what it may be off is a span: write {min: …, max: …}'],
    ['2.125 in ± 0.0005 in', 'a size and what it may be off is a span: write {min: …, max: …}'],
    [
      'round(2.12345 in, 3)',
      'round has too few values; a size is rounded by round(2.12345 in, 4, inch)',
    ],
    ['2,105.5 mm', '2,105.5 cannot be read; a number has no comma: write 2105.5'],
    [
      '1 thou = 0.001 in',
      '= gives a value a name, as journal = 2.105 in; to compare two, write ==',
    ],
    ['.units metric', '.units is a command of the prompt, which crankwright repl begins'],
    ['.about oilClearance\n2 in', '.about is a command of the prompt'],
    ['help(oilClearance)', 'help is off here; .about oilClearance tells what a function takes'],
    ['20 psi guage', 'a gauge pressure is written 60 psiGauge, 4 barGauge or 400 kPaGauge'],
    ['5% of 2 in', 'of: for of write *, as 5% * 2 in'],
    ['5% of 1 US qt', 'of: for of write *, as 5% * 1 US qt'],
    ['x = 5 % of (2 in + 1 in)', 'of: for of write *, as x = 5 % * (2 in + 1 in)'],
    ['6 drops/min to ml/hr', 'hangs on the size of the drops: dripFlow({drops: 6, time: 1 min})'],
    ['6 drops/min to mL/h', 'hangs on the size of the drops: dripFlow({drops: 6, time: 1 min})'],
    ['5 kg*cm to N m', 'a kilogram is a mass; the force of one is written kgf'],
    ['10 lbf ft to kg m', 'a kilogram is a mass; the force of one is written kgf'],
    ['2 kg*m/s^2 to psi', 'is not a pressure'],
    [
      `oilClearance(${sizes.replace('62 thou', '0.124 inch')})`,
      'whether the shell wall is that of both halves: 0.062 in, not 0.124 in, would go with',
    ],
    [
      `oilClearance(${sizes.replace('62 thou', '6.2 thou')})`,
      'Check the unit and the decimal point, e.g. 0.062 inch',
    ],
    ['1/4 turn', 'turn: a quarter turn is written 90 deg'],
    ['journal', 'journal: there is no such name'],
    ['oilClearance({housing bore: 2 in})', 'a name is one word: is housingBore meant?'],
    ['dilutionFinding(5 %)', 'does not say of what it is a share'],
    ['dilutionFinding(5)', 'for example 5 percentByVolume or 5 % by volume'],
    ['120 psiGauge + 1 psi', 'a gauge pressure and a pressure are not of one kind'],
    ['1 kg to inch', 'to: 1 kg is not a length'],
  ])('refuses %s', async (text, expected) => {
    const { code, out, err } = await calc(text);
    expect([code, out]).toEqual([2, '']);
    expect(err).toContain(expected);
  });

  it('looks for swapped readings where a sample is thicker than its oil', async () => {
    const { out } = await calc('thinningFinding({oil: 60 cSt, sample: 100 cSt})');
    expect(out).toContain('stage: thicker');
    expect(out).toContain('look first whether the two are swapped');
  });

  it('says of what is outside of its table of expansion that the figures are an estimate', async () => {
    const part = '{expansion: meanExpansion("grey iron"), temperature: 400 degF}';
    const ring = `{gap: 8 thou, measuredIn: 3 in, warmBore: ${part}, warmRing: ${part}}`;
    const { out } = await calc(`ringGapHot(${ring})`);
    expect(out).toContain(
      'expansion is tabled for: warmBore, warmRing; take the figures as an estimate',
    );
  });

  it.each([
    // One pound-force is 4.4482216152605 N, and one foot 0.3048 m, by definition: 18 of them are 24.4047 N·m.
    ...['18 ft-lbs', '18 ftlb', '18 foot pounds', '18 foot-pounds', '18 pound-feet', '18 ft.lbs'],
    ...['216 inlbs', '216 inch pounds', '216 inch-pounds', '216 in.lbs'],
  ])('takes a torque as people write it: %s', async (typed) => {
    expect((await calc(`${typed} to Nm`)).out).toBe('24.405 N·m');
  });

  it('works out what drips in a night, of both ends', async () => {
    // 6 drops a minute of 0.018 to 0.050 mL are 6.48 to 18 mL/h: 77.76 to 216 mL in 12 h, 4.745 to 13.181 in³.
    const drip = 'dripFlow({drops: 6, time: 1 min})';
    expect((await calc(`${drip} * 12 h`)).out).toBe('min: 4.745 in³\nmax: 13.181 in³');
    expect((await calc(`12 h * ${drip}`, '--units', 'metric')).out).toBe(
      'min: 0.078 L\nmax: 0.216 L',
    );
    expect((await calc('18 mL/h * 12 h')).out).toBe('13.181 in³');
    expect((await calc(`${drip} * -1`)).out).toBe('min: -18 mL/h\nmax: -6.48 mL/h');
    expect((await calc(`${drip} / 2`)).out).toContain('max: 9 mL/h');
    expect((await calc(`${drip} * ${drip}`)).err).toContain('name the one that you mean');
  });

  it('rounds what goes on for ever for the eye alone', async () => {
    const [{ value }] = JSON.parse((await calc('1/3 in', '--json')).out);
    expect(value).toBeCloseTo(0.0254 / 3, 15);
    expect((await calc('1/3 in')).out).toBe('0.33333 in');
  });

  it.each([
    ['dilutionFinding(13.2 percentByVolume)', 'Fuel vapour in a crankcase can explode'],
    [
      'hydraulicLockHours({clearanceVolume: 60 mL, leak: 18 mLPerHour})',
      'take the plugs out before you crank',
    ],
    [
      'skimForRatio({bore: 80 mm, stroke: 80 mm, chamber: 75 mL, deckClearance: 0 mm, gasket: {thickness: 1 mm, bore: 82 mm}, wanted: 7, skimArea: 9000 mm^2})',
      'check each valve at full lift',
    ],
    [
      'gasketForRatio({bore: 80 mm, stroke: 80 mm, chamber: 75 mL, deckClearance: 0 mm, gasket: {bore: 82 mm}, wanted: 6})',
      'a piston past its face hits it',
    ],
    [
      'torqueSetting({thread: threadOf("3/8-24"), proofStress: 85 ksi, condition: "oiled"})',
      'Too little preload breaks a rod bolt as surely as too much',
    ],
    [
      'shrinkTemperature({diameter: 1.25 in, diametralInterference: 2 thou, handlingGap: 1.5 thou, hub: meanExpansion("bronze"), shaft: meanExpansion("steel"), shaftTemperature: 70 degF})',
      'Hot metal looks cold',
    ],
  ])('shows the usual caution on %s', async (typed, care) => {
    expect((await calc(typed)).out).toContain(care);
  });

  it('takes a fraction above one without a unit as the difference that it is', async () => {
    // 2 - 9/8.
    expect(await calc('2-9/8')).toEqual({ code: 0, out: '0.875', err: '' });
  });

  it('shows no caution on little fuel', async () => {
    expect((await calc('dilutionFinding(1 percentByVolume)')).out).not.toContain('explode');
  });

  it('tells the thresholds of a multiple as the finding beside them does', async () => {
    // 2.5 over the root of 0.3² + 0.4²: 5.
    const { out } = await calc('filmRegime(2.5 um, {journal: 0.3 um, shell: 0.4 um})');
    expect(out).toContain('film over roughness 5.00: above the least of 3.00');
    expect(out).toContain('mixed: 1\n  full: 3');
  });

  it('reads many lines from standard input and tells the line of a mistake', async () => {
    const input = [
      '# a journal',
      'j = 2.105 inch',
      'clearance = oilClearance({housingBore: 2.251 inch,',
      '  journal: j,  # as ground',
      '  shellWall: 62 thou});',
      'clearance + \\',
      '  1 thou',
      'j +',
    ].join('\n');
    const { code, out, err } = await captured(['calc'], { input });
    expect(out).toBe('2.105 in\n23 thou\n');
    expect(err).toContain('crankwright: line 8: this ends too early');
    expect(code).toBe(2);
  });

  it('prints JSON in SI', async () => {
    const { out } = await calc(`c = oilClearance(${sizes})`, '--json');
    const [{ value, ...named }] = JSON.parse(out);
    expect(named).toEqual({ name: 'c', unit: 'm', dimension: 'length' });
    // 2.251 - 2 * 0.062 - 2.105 = 0.022 in; each size has the rounding of 57 mm in it.
    expect(value).toBeCloseTo(0.0005588, 15);
    const finding = 'explainClearance({clearance: 22 thou, journal: 2.105 inch})';
    expect(JSON.parse((await calc(finding, '--json')).out)[0].value.mismatch).toBe(0.000508);
  });

  it('prints in metric units when asked to', async () => {
    const { out } = await calc(`oilClearance(${sizes})`, '--units', 'metric');
    expect(out).toMatch(/^0\.559 mm: above 0\.080 mm/);
  });

  it('judges a metric engine by metric steps', async () => {
    // 57.175 - 2 * 1.575 - 53.475 = 0.550 mm; the step below it that shells are made in is 0.50 mm.
    const metric = '{housingBore: 57.175 mm, journal: 53.475 mm, shellWall: 1.575 mm}';
    const { out } = await calc(`oilClearance(${metric})`, '--units', 'metric');
    expect(out).toContain('A step of 0.500 mm explains it: matching shells would leave 0.050 mm.');
  });

  it('asks to read again before anything rests on what a step would explain', async () => {
    const { out } = await calc('explainClearance({clearance: 22 thou, journal: 2.105 inch})');
    expect(out.split('\n')).toEqual([
      expect.stringMatching(/^it is as if the journal were ground 0\.0200 in below/),
      'Read journal and housing again, and the stamp on the shells, before anything rests on that.',
    ]);
  });

  it('asks for an expression, and for quotes', async () => {
    expect((await captured(['calc'])).err).toContain('no expression given');
    expect((await captured(['calc', '2', 'inch'])).err).toContain('in quotes');
  });
});
