/** Contrast of two colors as a browser computes them. */

type Channels = readonly [red: number, green: number, blue: number];

/** `rgb(0, 0, 0)`, `rgba(0, 0, 0, 0.5)` and `color(srgb 0 0 0 / 0.5)`, the forms in which styles are computed (CSS Color 4, 15). */
function parsed(text: string): { readonly channels: Channels; readonly opacity: number } {
  const numbers = (text.match(/[\d.]+(?:e-?\d+)?/g) ?? []).map(Number);
  const [red, green, blue, opacity = 1] = numbers;
  if (!/^(?:rgba?\(|color\(srgb )/.test(text) || red === undefined || green === undefined || blue === undefined) throw new Error(`${text} is no color that is understood here`);
  const whole = text.startsWith('color') ? 1 : 255;
  return { channels: [red / whole, green / whole, blue / whole], opacity };
}

/** WCAG 2.2, relative luminance. */
const luminance = (channels: Channels): number => {
  const [red, green, blue] = channels.map((one) => (one <= 0.04045 ? one / 12.92 : ((one + 0.055) / 1.055) ** 2.4)) as [number, number, number];
  return 0.2126 * red + 0.7152 * green + 0.0722 * blue;
};

/** WCAG 2.2, contrast ratio of a paint, as far as it covers, with what lies behind it. */
export function contrastOf(paint: string, behind: string, opacity = 1): number {
  const [over, under] = [parsed(paint), parsed(behind)];
  const share = over.opacity * opacity;
  const mixed = over.channels.map((one, i) => one * share + under.channels[i]! * (1 - share)) as unknown as Channels;
  const [dark = 0, light = 0] = [luminance(mixed), luminance(under.channels)].sort((a, b) => a - b);
  return (light + 0.05) / (dark + 0.05);
}
