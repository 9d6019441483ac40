import type { Json } from '../sheet/sheets.js';

/** What the file of a small side-valve engine of 3.25 in stroke may say of its assembly: something in every section. */
export const plainAssembly = (): { [key: string]: Json } => ({
  wrench: 'lbf ft',
  fasteners: {
    mainCaps: { torque: '20 lbf ft', source: 'manual, sheet 4', locking: 'tabs' },
    rodCaps: {
      thread: '5/16-24 UNF',
      grade: 'SAE 8',
      condition: 'oiled',
      torque: { min: '14 lbf ft', max: '18 lbf ft' },
      locking: 'pins',
    },
    head: {
      thread: { form: 'Whitworth', diameter: '0.375 in', pitch: '0.0625 in' },
      leastDiameter: '0.37 in',
      torque: '20 lbf ft',
      prevailing: '1 lbf ft',
      adapter: { wrench: '18 in', adapter: '6 in', angle: '90 deg' },
      rounds: 2,
      bolts: [
        { name: '1', along: '0 in', across: '0 in' },
        { name: '2', along: '3 in', across: '0 in' },
      ],
    },
    flywheel: { condition: 'dry' },
  },
  valves: {
    inlet: { lash: { min: '0.007 in', max: '0.009 in' }, set: 'cold', setBy: 'stem' },
    exhaust: {
      lash: { min: '0.012 in', max: '0.014 in', source: 'manual, sheet 2' },
      set: 'hot',
      setBy: 'screw',
      train: {
        carrier: [{ length: '6 in', material: 'grey iron', temperature: '90 °C' }],
        train: [{ length: '6 in', material: 'steel', temperature: '150 °C' }],
      },
      closedSpring: { height: '1.150 in', force: { min: '34 lbf', max: '40 lbf' } },
      openSpring: { height: '0.850 in', force: { min: '80 lbf' } },
    },
  },
  rings: { sideClearance: { max: '0.0035 in' }, backClearance: { min: '0.005 in' } },
  rodLength: '6.000 in',
  compression: {
    chamber: '68 mL',
    blockChamber: { min: '12 mL', max: '13 mL' },
    crown: '-1 mL',
    gasket: { thickness: '0.045 in', area: '13.5 in²' },
    deckClearance: '0.020 in',
    deckHeight: '9.500 in',
    pinHeight: { min: '1.849 in', max: '1.851 in' },
    ratio: { min: '4.6', max: '5.1', source: 'manual, sheet 1' },
    airPressure: '98 kPa',
    rules: [
      { kind: 'spread', most: '20 psi' },
      { kind: 'share of highest', least: '75 %', source: 'manual, sheet 1' },
      { kind: 'share of average', least: '80 %' },
      { kind: 'near a figure', figure: '80 psi gauge', within: '10 psi' },
      { kind: 'at least', least: '60 psi gauge' },
    ],
  },
  timing: {
    rimDiameter: '13.0 in',
    spark: {
      advance: '22 deg',
      speedRatio: '0.5',
      lag: '12 deg',
      retard: '2 deg',
      within: '1 deg',
      starting: { max: '0 deg' },
    },
    valves: {
      inletOpens: '5 deg before top',
      inletCloses: '45 deg after bottom',
      exhaustOpens: '50 deg before bottom',
      exhaustCloses: '10 deg after top',
      within: '2 deg',
    },
    gears: { crankTeeth: 22, camTeeth: 44 },
    pointsGap: { min: '0.012 in', max: '0.015 in' },
    plugGap: { max: '0.028 in' },
    source: 'manual, sheet 5',
  },
  dipper: {
    cylinder: 'upright',
    dipper: '1.750 in',
    centreAboveFloor: '3.500 in',
    oilDepth: { min: '0.375 in', max: '0.500 in' },
    dip: { max: '0.400 in' },
    clearance: { min: '0.060 in' },
  },
  fits: [
    {
      name: 'pin in its rod',
      clearance: { min: '0.0003 in', max: '0.0008 in' },
      hole: '0.7505 in',
      shaft: ['0.7500 in', '0.7499 in'],
    },
    { name: 'bush', isoFit: '20H7/s6' },
    { name: 'timing gear', inchFit: { fitClass: 'FN2', basic: '1.125 in' } },
  ],
});
