/** What the tables say against figures and laws from outside, and what must rise or fall. */
import { describe, expect, it } from 'vitest';
import { computeTable, computeValue, tableKind, type Conditions, type Parameters, type QuantityName } from '../../src/tables/index.ts';
import { certain, conditions } from './conditions.ts';

type Arguments<F extends (...args: never[]) => unknown> = F extends (...args: infer A) => unknown ? A : never;

/** Cells of one column, marked rows left out. */
function column(kind: string, key: string, at: Parameters = {}, list?: readonly number[], of: Conditions = certain): (number | boolean | null)[] {
  const table = computeTable(tableKind(kind)!, of, { at, list });
  const index = table.columns.findIndex((one) => one.key === key);
  return table.rows.filter((_, r) => table.rowsAt[r]!.mark === undefined).map((row) => row[index]!);
}
const numbers = (...of: Arguments<typeof column>): number[] => column(...of) as number[];
const value = (of: QuantityName, at: Parameters = {}): number => computeValue(certain, of, at).value!;
const rises = (values: readonly number[]): boolean => values.every((one, i) => i === 0 || one > values[i - 1]!);
const falls = (values: readonly number[]): boolean => rises([...values].reverse());

describe('published figures', () => {
  it('station pressures are those of the standard atmosphere (US Standard Atmosphere 1976, table I, by geometric altitude; from memory)', () => {
    const pressures = numbers('elevations', 'stationPressure', {}, [0, 1000, 2000, 3000, 5000]);
    [101_325, 89_876, 79_501, 70_121, 54_048].forEach((expected, i) => expect(Math.abs(pressures[i]! - expected)).toBeLessThan(1));
  });

  it('saturated air of 25 °C holds 3169.7 Pa of vapor (ASHRAE Handbook Fundamentals 2017, ch. 1, table 3; from memory), 0.3–0.6 % more in the presence of air (WMO-No. 8, annex 4.B)', () => {
    const ratio = value('startVaporPressure', { humidity: 1, temperature: 298.15 }) / 3169.7;
    expect(ratio).toBeGreaterThan(0.9997);
    expect(ratio).toBeLessThan(1.006);
  });

  it.each([0.5, 0.7, 0.9])('the cloud base at %d humidity is where Bolton’s condensation temperature is reached (Bolton 1980, Mon. Wea. Rev. 108, 1046, eq. 22: within 0.1 K)', (humidity) => {
    const T = certain.inputs.roomTemperature.value;
    const condensation = 1 / (1 / (T - 55) - Math.log(humidity) / 2840) + 55;
    const [temperature] = numbers('starting-humidity', 'onsetTemperature', {}, [humidity]);
    expect(Math.abs(temperature! - condensation)).toBeLessThan(0.15);
    // 9.76 K a kilometer, less by up to 1 % for the vapor in the air
    const [height] = numbers('starting-humidity', 'cloudBaseHeight', {}, [humidity]);
    expect(height! / ((T - condensation) / 9.76e-3)).toBeCloseTo(1, 1);
    expect(Math.abs(height! / ((T - condensation) / 9.76e-3) - 1)).toBeLessThan(0.02);
  });

  it('the cloud base of air of 300 K, 100 kPa and 50 % is at 1433.844 m (Romps 2017, J. Atmos. Sci. 74, 3891: self-test of the author’s code; other vapor pressure and gravity: 0.3 %)', () => {
    const [height] = numbers('starting-humidity', 'cloudBaseHeight', { temperature: 300 }, [0.5]);
    expect(Math.abs(height! / 1433.844139279 - 1)).toBeLessThan(0.003);
  });

  it('nearly dry air cools by Poisson’s law (Wallace & Hobbs 2006, eq. 3.54: R/c_p = 0.286)', () => {
    const drops = [5000, 10_000, 20_000];
    numbers('pressure-steps', 'temperatureClear', { humidity: 0.01 }, drops).forEach((T, i) => {
      expect(Math.abs(T - 293.15 * (1 - drops[i]! / 100_000) ** 0.286)).toBeLessThan(0.05);
    });
  });

  it('the same reading is the same in every unit (NIST SP 811, B.8)', () => {
    const [absolute] = numbers('gauge-readings', 'absolutePressure', {}, [-20_000]);
    expect(absolute).toBe(80_000);
  });

  it('a particle of 0.1 µm with κ = 0.61 needs what Petters & Kreidenweis 2007, eq. 10, has, with σ = 72.75 mN/m (IAPWS R1-76) and ρ = 998 kg/m³ at 20 °C', () => {
    const A = (4 * 0.07275 * 0.018015) / (8.314 * 293.15 * 998);
    const expected = Math.expm1(Math.sqrt((4 * A ** 3) / (27 * 0.61 * 1e-21)));
    const [needed] = numbers('particle-sizes', 'criticalSupersaturation', { particles: 'salt' }, [1e-7]);
    // The approximation itself is good to some percent there.
    expect(needed! / expected).toBeGreaterThan(0.97);
    expect(needed! / expected).toBeLessThan(1.05);
  });

  it('clean moist air clouds at about Wilson’s ratio of volumes, 1.25 (C. T. R. Wilson 1897, Phil. Trans. A 189, 265), which as a ratio of pressures is 1.25^1.4', () => {
    const pressure = 100_000 - value('noParticleLimitDrop', { humidity: 1 });
    const volumes = (100_000 / pressure) ** (1 / 1.4);
    expect(volumes).toBeGreaterThan(1.24);
    expect(volumes).toBeLessThan(1.30);
  });

  it('drops fall as Rogers & Yau 1989, eq. 8.5, say: 1.19·10⁶ cm⁻¹s⁻¹ times the radius squared, below 30 µm', () => {
    const diameters = numbers('droplets', 'dropletDiameter');
    const speeds = numbers('droplets', 'fallSpeed');
    const small = diameters.flatMap((d, i) => (d > 4e-6 && d < 4e-5 ? [speeds[i]! / (1.19e8 * (d / 2) ** 2)] : []));
    expect(small.length).toBeGreaterThan(1);
    for (const ratio of small) expect(Math.abs(ratio - 1)).toBeLessThan(0.08);
  });

  it('the first dark ring is at 1.22 wavelengths over the diameter (Airy 1835), 0.57 µm in white light (Minnaert 1954, § 164)', () => {
    const diameters = numbers('droplets', 'dropletDiameter');
    numbers('droplets', 'coronaRadius').forEach((angle, i) => expect(Math.sin(angle)).toBeCloseTo((1.2197 * 0.57e-6) / diameters[i]!, 4));
  });

  it('the wall bears what Roark has, and the lid pressure times area', () => {
    const [force, stress, energy] = ['lidForce', 'wallStress', 'storedEnergy'].map((key) => numbers('wall-forces', key, {}, [-20_000])[0]!);
    expect(force).toBeCloseTo(-20_000 * Math.PI * 0.08 ** 2, 6);
    expect(stress).toBeCloseTo((-20_000 * 0.16) / (2 * 0.005), 3);
    expect(energy).toBeCloseTo(20_000 * 0.005, 9);
    expect(numbers('wall-forces', 'ratingMargin', {}, [-20_000, 0])).toEqual([70_000, 90_000]);
    expect(numbers('wall-forces', 'ratingMargin', {}, [-95_000])[0]).toBe(-5000);
  });
});

describe('what must rise or fall', () => {
  const drops = [0, 5000, 10_000, 15_000, 20_000, 25_000];

  it('pumping further cools more, with drops half as far, and condenses more', () => {
    const clear = numbers('pressure-steps', 'temperatureClear', {}, drops);
    const cloudy = numbers('pressure-steps', 'temperatureCloudy', {}, drops);
    expect(falls(clear)).toBe(true);
    expect(falls(cloudy)).toBe(true);
    cloudy.slice(1).forEach((T, i) => expect(T).toBeGreaterThan(clear[i + 1]!));
    expect(rises(numbers('pressure-steps', 'saturationRatioClear', {}, drops))).toBe(true);
    expect(rises(numbers('pressure-steps', 'cloudWater', {}, drops.slice(1)))).toBe(true);
    for (const key of ['altitudeSamePressure', 'parcelHeightSamePressure', 'parcelRiseSameCooling']) expect(rises(numbers('pressure-steps', key, {}, drops))).toBe(true);
  });

  it('starting drier needs a larger drop and a higher rise', () => {
    for (const key of ['onsetPressureDrop', 'cloudBaseHeight']) expect(falls(numbers('starting-humidity', key))).toBe(true);
  });

  it('higher up a smaller reading cools as much', () => {
    expect(rises(numbers('elevations', 'gaugeSameCooling'))).toBe(true); // toward zero
    expect(value('gaugeSameCooling', { elevation: 0, drop: 20_000 }) / -20_000).toBeCloseTo(101_325 / 100_000, 3);
  });

  it('a parcel is clear below its cloud base and saturated above', () => {
    const table = computeTable(tableKind('rising-parcel')!, conditions, { at: {} });
    const marked = table.rowsAt.findIndex(({ mark }) => mark === 'cloudBase');
    expect(marked).toBeGreaterThan(0);
    expect(table.rows[marked]![3]).toBeCloseTo(1, 8);
    table.rows.slice(0, marked).forEach((row) => expect([Number(row[3]) < 1, row[4]]).toEqual([true, 0]));
    table.rows.slice(marked + 1).forEach((row) => {
      expect(row[3]).toBeCloseTo(1, 8);
      expect(row[4]).toBeGreaterThan(0);
    });
    expect(table.rowsAt[marked]!.uncertainty).toBeGreaterThan(10);
  });

  it('the cloud base marked is that of the air asked for', () => {
    const base = (at: Parameters): number => computeTable(tableKind('rising-parcel')!, certain, { at }).rowsAt.find(({ mark }) => mark !== undefined)!.at;
    expect(base({ air: 'vessel', humidity: 0.5 })).toBeCloseTo(base({ air: 'room' }), 9);
    expect(base({ air: 'vessel' })).toBeLessThan(base({ air: 'vessel', humidity: 0.8 }));
  });

  it('more particles make more and smaller drops at a lower supersaturation, and a denser cloud', () => {
    const few = [1e7, 1e8, 1e9, 1e10, 1e11, 1e12];
    for (const key of ['peakSaturationRatio', 'dropletDiameter', 'fallSpeed']) expect(falls(numbers('droplets', key, {}, few))).toBe(true);
    for (const key of ['cloudWater', 'opticalDepth', 'coronaRadius']) expect(rises(numbers('droplets', key, {}, few))).toBe(true);
    const clear = value('saturationRatioClear');
    numbers('droplets', 'peakSaturationRatio', {}, few).forEach((S) => expect(S).toBeLessThan(clear));
    expect(column('droplets', 'seen', {}, [1e7, 1e11])).toEqual([false, true]);
  });

  it('larger particles need less, and all above the smallest that becomes a drop become one', () => {
    expect(falls(numbers('particle-sizes', 'criticalSupersaturation'))).toBe(true);
    const table = computeTable(tableKind('particle-sizes')!, certain, { at: { particles: 'smoke' } });
    const marked = table.rowsAt.findIndex(({ mark }) => mark !== undefined);
    table.rows.forEach((row, i) => expect(row[2]).toBe(i >= marked));
    expect(marked).toBeGreaterThan(0);
  });

  it('particles that left are all accounted for, and fewer are left each time', () => {
    const table = computeTable(tableKind('particle-lifetime')!, certain, { at: { cloudEvery: 600 } });
    for (const row of table.rows) {
      const [, left, ...lost] = row.slice(0, 6) as number[];
      expect(lost.reduce((sum, one) => sum + one, left!) / 1e10).toBeCloseTo(1, 6);
    }
    expect(falls(table.rows.map((row) => row[1] as number))).toBe(true);
    expect(table.rows.at(-1)![5]).toBeGreaterThan(0);
    expect(numbers('particle-lifetime', 'lostToClouds')).toEqual(Array(7).fill(0));
  });

  it('coagulation halves many particles in the time of Smoluchowski, 2/(K n) (Hinds 1999, table 12.1: K = 1.4·10⁻¹⁵ m³/s for 0.1–0.2 µm as 2·7·10⁻¹⁶; from memory)', () => {
    // Particles are wet and of many sizes, which makes K up to three times as large; walls take some besides.
    const half = 2 / (1.4e-15 * 1e12);
    const [left] = numbers('particle-lifetime', 'number', { number: 1e12 }, [half]);
    expect(left! / 1e12).toBeGreaterThan(0.25);
    expect(left! / 1e12).toBeLessThan(0.55);
  });

  it('clean air is clear up to the limit and not beyond', () => {
    const table = computeTable(tableKind('no-particle-limit')!, conditions, { at: {} });
    const limit = table.rowsAt.findIndex(({ mark }) => mark === 'cloudWithoutParticles');
    table.rows.forEach((row, i) => expect(row[5]).toBe(i < limit));
    const [S, ion, homogeneous] = [2, 3, 4].map((c) => table.rows[limit]![c] as number);
    expect(S).toBeCloseTo(Math.min(ion!, homogeneous!), 6);
    const saturated = table.rowsAt.findIndex(({ mark }) => mark === 'saturated');
    expect(table.rows[saturated]![2]).toBeCloseTo(1, 6);
  });

  it('pump strokes take the pressure between Boyle’s law and the adiabat (γ = 1.4), and the thermometer falls less than the air', () => {
    const strokes = [0, 1, 2, 3, 4, 5];
    const ratio = 0.005 / 0.0052;
    const air = numbers('strokes', 'gasTemperature', {}, strokes);
    numbers('strokes', 'absolutePressure', {}, strokes).forEach((p, n) => {
      expect(p).toBeLessThanOrEqual(100_000 * ratio ** n + 1e-6);
      expect(p).toBeGreaterThanOrEqual(100_000 * ratio ** (1.4 * n) - 1e-6);
    });
    numbers('strokes', 'thermometerReading', {}, strokes).slice(1).forEach((T, i) => expect(T).toBeGreaterThan(air[i + 1]!));
    expect(column('strokes', 'cloud', {}, strokes)).toEqual(Array(6).fill(false));
    expect(numbers('strokes', 'cloudWater', {}, strokes)).toEqual(Array(6).fill(0));
    expect(column('strokes', 'cloud', { particles: 'smoke' }, strokes).at(-1)).toBe(true);
    expect(numbers('strokes', 'time', {}, [4])[0]).toBeCloseTo(6, 9);
  });

  it('the values in a sentence are those of the tables', () => {
    const last = value('strokesToDrop');
    const pressures = numbers('strokes', 'absolutePressure', {}, [last - 1, last]);
    expect(pressures[0]).toBeGreaterThan(80_000);
    expect(pressures[1]).toBeLessThan(82_000);
    expect(value('pumpingTime')).toBeCloseTo(1.5 * last, 9);
    expect(value('thermometerFallAtDrop')).toBeLessThan(value('thermometerLargestFall'));
    expect(value('thermometerLargestFall')).toBeLessThan(value('gasFallAtDrop'));
    expect(value('gasFallAtDrop')).toBeLessThan(value('coolingClear'));
    expect(value('peakSupersaturation') + 1).toBeCloseTo(value('peakSaturationRatio'), 12);
  });
});
