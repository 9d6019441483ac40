import { type FormulaCard, input } from '../card.js';

const journal = input('D', 'journal diameter', 'length', 0.02, 0.09);
const length = input('L', 'length of the bearing', 'length', 0.015, 0.06);
const clearance = input('C', 'diametral clearance', 'length', 2e-5, 1e-4);
const viscosity = input('mu', 'viscosity of the oil in the film', 'dynamicViscosity', 0.003, 0.1);
const speed = input('omega', 'speed of the journal', 'rotationalSpeed', 50, 400);
const load = input('W', 'load across the shaft', 'force', 100, 5000);
const eccentricity = input('e', 'eccentricity', 'ratio', 0.05, 0.95);
const slender = input('lambda', 'length over diameter', 'ratio', 0.05, 0.5);
const OCVIRK = 'Ocvirk, NACA TN 2808 (1952), half film';

/** Formulas of the bearings room: the oil film. */
export const filmCards = {
  sommerfeldNumber: {
    name: 'Sommerfeld number',
    computedBy: 'sommerfeldNumber',
    result: { symbol: 'S', meaning: 'Sommerfeld number', dimension: 'ratio' },
    inputs: [journal, length, clearance, viscosity, speed, load],
    where: ['N = omega / (2 * pi * 1 rad)', 'P = W / (D * L)'],
    expression: '(D / C)^2 * mu * N / P',
    source: 'Raimondi and Boyd, Trans. ASLE 1 (1958)',
  },
  petroffTorque: {
    name: 'drag of a centred journal',
    computedBy: 'petroff',
    result: { symbol: 'T', meaning: 'torque against the turning', dimension: 'torque' },
    inputs: [journal, length, clearance, viscosity, speed],
    where: [],
    expression: 'pi * mu * (omega / (1 rad)) * D^3 * L / (2 * C)',
    source: "Petroff's equation",
  },
  shortBearingSommerfeld: {
    name: 'Sommerfeld number of a short bearing',
    computedBy: 'shortBearing',
    result: { symbol: 'S', meaning: 'Sommerfeld number', dimension: 'ratio' },
    inputs: [eccentricity, slender],
    where: ['q = 1 - e^2'],
    expression: 'q^2 / (pi * e * sqrt(pi^2 * q + 16 * e^2) * lambda^2)',
    source: OCVIRK,
  },
  shortBearingAttitude: {
    name: 'attitude angle of a short bearing',
    computedBy: 'shortBearing',
    result: { symbol: 'phi', meaning: 'attitude angle', dimension: 'angle' },
    inputs: [eccentricity],
    where: [],
    expression: 'atan(pi * sqrt(1 - e^2) / (4 * e)) * 1 rad',
    source: OCVIRK,
  },
  journalFriction: {
    name: 'friction of a journal from its load and attitude',
    computedBy: 'shortBearing',
    result: { symbol: 'F', meaning: 'friction (r/c) f', dimension: 'ratio' },
    inputs: [eccentricity, slender],
    where: [
      'q = 1 - e^2',
      'S = q^2 / (pi * e * sqrt(pi^2 * q + 16 * e^2) * lambda^2)',
      'phi = atan(pi * sqrt(q) / (4 * e))',
    ],
    expression: '2 * pi^2 * S / sqrt(q) + e / 2 * sin(phi)',
    source: 'balance of forces on the journal, oil taken to fill the whole gap',
  },
  filmRatio: {
    name: 'film over roughness',
    computedBy: 'filmRegime',
    result: { symbol: 'R', meaning: 'film ratio', dimension: 'ratio' },
    inputs: [
      input('h', 'least film', 'length', 1e-7, 1e-5),
      input('q_j', 'roughness Rq of the journal', 'length', 5e-8, 1e-6),
      input('q_s', 'roughness Rq of the shell', 'length', 5e-8, 1e-6),
    ],
    where: [],
    expression: 'h / sqrt(q_j^2 + q_s^2)',
    source: 'Norton, Machine Design, 4th ed., specific film thickness',
  },
  temperatureRise: {
    name: 'how far friction warms the oil of a bearing',
    computedBy: 'temperatureRise',
    result: { symbol: 't', meaning: 'rise of temperature', dimension: 'temperatureDifference' },
    inputs: [
      input('P', 'power of friction', 'power', 5, 500),
      input('Q', 'flow through the widest gap', 'flow', 2e-6, 2e-5),
      input('Q_s', 'flow over both ends', 'flow', 1e-7, 2e-6),
      input('rho', 'density of the oil', 'density', 780, 900),
      input('H', 'specific heat of the oil', 'specificHeat', 1700, 2200),
    ],
    where: [],
    expression: 'P / (rho * H * (Q - Q_s / 2))',
    source: 'Raimondi and Boyd, Trans. ASLE 1 (1958): all heat carried by the oil',
  },
} as const satisfies Record<string, FormulaCard>;
