import {
  celsius,
  centistokes,
  inch,
  kilogramPerCubicMetre,
  lbf,
  micrometre,
  rpm,
  thou,
} from 'crankwright';

/** An invented big end of the pump set, for tests of behaviour. */
export const bigEnd = {
  journal: inch(1.625),
  length: inch(1),
  clearance: thou(1.6),
  speed: rpm(1800),
  load: lbf(400),
};

/** An invented oil of about SAE 30. */
export const oil = {
  line: [
    { temperature: celsius(40), viscosity: centistokes(100) },
    { temperature: celsius(100), viscosity: centistokes(11.1) },
  ],
  density: kilogramPerCubicMetre(885),
} as const;

/** That big end, fed with that oil. */
export const fed = { ...bigEnd, oil, inlet: celsius(70) };

/** And the roughness of its surfaces. */
export const rough = { ...fed, roughness: { journal: micrometre(0.3), shell: micrometre(0.5) } };
