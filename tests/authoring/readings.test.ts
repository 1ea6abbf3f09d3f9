/** Recorded readings: what is read from good tables, in SI, and what is said of others. */
import { describe, expect, it } from 'vitest';
import { readReadings } from '../../src/authoring/index.ts';

const FILE = 'content/kits/a/readings/7b.csv';
const read = (text: string) => readReadings(text, FILE);
const HEADER = 'time (s),gauge (kPa),thermometer (°C)';

describe('readReadings', () => {
  it('gives each row in SI', () => {
    // 0 °C is 273.15 K (SI Brochure, 9th ed. 2019, 2.3.1).
    expect(read(`${HEADER}\n0,0,20.0\n10,-15,19.5\n`)).toEqual({
      readings: [
        { time: 0, gauge: 0, thermometer: expect.closeTo(293.15, 9) },
        { time: 10, gauge: -15_000, thermometer: expect.closeTo(292.65, 9) },
      ],
      findings: [],
    });
  });

  it.each([
    ['other units', 'time (min),gauge (inHg),thermometer (°F)\n0,0,68\n0.5,-1,50\n', { time: 30, gauge: -3386.389, thermometer: 283.15 }, 'NIST SP 811 (2008), B.8: inHg, conventional; °F'],
    ['other order', 'gauge (hPa),thermometer (°C),time (s)\n0,20,0\n-150,10,10\n', { time: 10, gauge: -15_000, thermometer: 283.15 }, 'SI Brochure'],
    ['lines that end in CR LF, and an empty one at the end', `${HEADER}\r\n0,0,20\r\n10,-15,10\r\n\r\n`, { time: 10, gauge: -15_000, thermometer: 283.15 }, 'RFC 4180'],
    ['spaces, quotation marks and a minus sign', `${HEADER}\n0, 0, 20\n"10","−15", 10 \n`, { time: 10, gauge: -15_000, thermometer: 283.15 }, 'RFC 4180'],
    ['uncertainties', 'time (s),gauge (kPa),gauge uncertainty (hPa),thermometer (°C),thermometer uncertainty (K)\n0,0,5,20,0.1\n10,-15,5,10,0.1\n', { time: 10, gauge: -15_000, gaugeUncertainty: 500, thermometer: 283.15, thermometerUncertainty: 0.1 }, 'SI Brochure'],
  ])('understands %s', (_, text, last, _source) => {
    const { readings, findings } = read(text);
    expect(findings).toEqual([]);
    const row = Object.entries(readings?.at(-1) ?? {}).map(([key, value]) => [key, Number(value.toPrecision(7))]);
    expect(Object.fromEntries(row)).toEqual(last);
  });

  it('finds everything in one pass, with line and column', () => {
    const { readings, findings } = read(`${HEADER}\n0,0,cold\n5,=A1,20\n4,-5,20\n9,-5\n`);
    expect(readings).toBeUndefined();
    expect(findings.map(({ code, line, column }) => `${code} ${line}:${column}`).sort()).toEqual([
      'csv-formula 3:3',
      'readings-value 2:5',
      'readings-value 4:1',
      'readings-value 5:1',
    ]);
  });
});
