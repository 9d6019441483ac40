import { reportPage } from 'crankwright/plots';
import { inspect, readSheet, report } from 'crankwright/sheet';
import { describe, expect, it } from 'vitest';
import { flowing } from '../pages/pages.js';
import { refusal } from '../quantities/refusal.js';
import type { Json } from './sheets.js';

const sheetWith = (oil: Json): Json => ({ version: 1, engine: 'twin', units: 'inch', oil });

describe('a leak of fuel into an oil of which nothing is known', () => {
  it('is judged as far as it goes: stop it, and how much is in the oil is not known', () => {
    const inspection = inspect(readSheet(sheetWith({ leak: { flow: '6 mL/h' } })));
    expect(inspection.oil?.leak?.left).toEqual({ known: false, because: 'no sample' });
    const text = flowing(report(inspection));
    expect(text).toContain(
      'DO NOT RUN on the oil that is in it: 6.0 mL/h of fuel leaks into it, and how much is in it is not known',
    );
    expect(text).toContain('stop the fuel leak of 6.0 mL/h');
    expect(text).toContain('used oil');
  });

  it('may come with what the sump holds', () => {
    const { oil } = readSheet(sheetWith({ leak: { drops: '6 per minute' }, sump: '2 L' }));
    expect(oil).toMatchObject({ sump: expect.closeTo(0.002, 12) });
  });

  it('is refused where it is wrong itself', () => {
    expect(refusal(() => readSheet(sheetWith({ leak: { drops: 'six' } })))).toMatchObject({
      problems: [{ path: 'oil.leak.drops' }],
    });
  });

  it('is not enough for a sample or a bearing: they are refused with what to type', () => {
    const sample = { temperature: '20 °C', viscosity: '200 cSt' };
    expect(
      refusal(() => readSheet(sheetWith({ leak: { flow: '6 mL/h' }, sump: '2 L', sample }))),
    ).toMatchObject({
      problems: [
        {
          path: 'oil.line',
          message:
            'is missing: give a list of two points, each temperature and viscosity, e.g. [{ "temperature": "40 °C", "viscosity": "100 cSt" }, { "temperature": "100 °C", "viscosity": "11 cSt" }]',
        },
      ],
    });
  });
});

it('a leak alone is told on the web page, where no picture of the oil can be drawn', () => {
  const page = reportPage(readSheet(sheetWith({ leak: { flow: '6 mL/h' } })));
  expect(page).toContain('Time left: unknown');
  expect(page).not.toContain('clean oil</text>');
});
