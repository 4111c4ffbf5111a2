// Exact arithmetic. A number is a fraction of two whole numbers, the lower one more than zero.

const fraction = (over, under = 1n) => ({ over, under });
const plus = (a, b) => fraction(a.over * b.under + b.over * a.under, a.under * b.under);
const minus = (a, b) => fraction(a.over * b.under - b.over * a.under, a.under * b.under);
const times = (a, b) => fraction(a.over * b.over, a.under * b.under);
const divided = (a, b) => fraction(a.over * b.under, a.under * b.over);
const compare = (a, b) => {
  const left = a.over * b.under;
  const right = b.over * a.under;
  return left < right ? -1 : left > right ? 1 : 0;
};
const HALF = fraction(1n, 2n);

/** Digits with or without a decimal point, as a fraction. */
function decimal(text) {
  const form = /^([0-9]+)(?:\.([0-9]+))?$/.exec(text);
  if (form === null) {
    throw new Error(`“${text}” is no plain decimal number`);
  }
  const decimals = form[2] ?? "";
  return fraction(BigInt(form[1] + decimals), 10n ** BigInt(decimals.length));
}

// Every unit by its spellings, with its size in the SI unit. Foot, pound and grain are those of the
// international agreement of 1959; the pound-force takes the standard gravity of 9.80665 m/s².
const unit = (symbol, size, ...others) =>
  [symbol, ...others].map((spelling) => [spelling, { symbol, size: decimal(size) }]);
const SPEEDS = new Map([...unit("ft/s", "0.3048", "fps"), ...unit("m/s", "1")]);
const MASSES = new Map([
  ...unit("gr", "0.00006479891", "grain", "grains"),
  ...unit("g", "0.001"),
  ...unit("kg", "1"),
  ...unit("lb", "0.45359237"),
]);
const FORCES = new Map([...unit("lbf", "4.4482216152605", "lb", "#"), ...unit("N", "1")]);
const ENERGIES = new Map([
  ...unit("J", "1"),
  ...unit("ft·lbf", "1.3558179483314004", "ft-lbf", "ft.lbf", "ft-lb"),
]);

/** A number with its unit: its symbol, and the value in the SI unit. */
function quantity(text, units) {
  const form = /^\s*([0-9]+(?:\.[0-9]+)?)\s*(\S+)\s*$/.exec(text);
  const found = form === null ? undefined : units.get(form[2]);
  if (found === undefined) {
    throw new Error(`“${text}” has no unit that this page knows`);
  }
  return { symbol: found.symbol, size: found.size, si: times(decimal(form[1]), found.size) };
}

/** A share such as 3 %, as a fraction of one. */
function share(text) {
  const form = /^\s*([0-9]+(?:\.[0-9]+)?)\s*%\s*$/.exec(text);
  if (form === null) {
    throw new Error(`“${text}” is no percentage`);
  }
  return divided(decimal(form[1]), fraction(100n));
}
const isShare = (text) => text.includes("%");

/** To a whole multiple of a step: the next one down, or the nearest, where a half goes up. */
function rounded(value, step, nearest) {
  const count = divided(value, step);
  const raised = nearest ? plus(count, HALF) : count;
  return times(fraction(raised.over / raised.under), step);
}

/** An SI value in a unit, with at most four decimals; dots say where more were cut off. */
function shown(si, in_) {
  const value = divided(si, in_.size);
  const scaled = (value.over * 10000n) / value.under;
  const exact = scaled * value.under === value.over * 10000n;
  const digits = String(scaled).padStart(5, "0");
  const text = `${digits.slice(0, -4)}.${digits.slice(-4)}`;
  return `${exact ? text.replace(/\.?0+$/, "") : `${text}…`}\u00a0${in_.symbol}`;
}
