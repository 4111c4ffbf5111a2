// What a division's rule says of a check: the limit, the figure that decides, the outcome.

const OPEN = null;
const VERY_FAST = fraction(10n ** 9n);
/** No rule book has more shots than this, nor voids, nor readings that count. */
const MOST_SHOTS = 50;
const VERY_SLOW = fraction(-(10n ** 9n));

/** none, “down to …” or “nearest …”, as a function. */
function rounding(text) {
  const form = /^(down to|nearest) +(.+)$/.exec((text ?? "none").trim());
  if (form === null) {
    if ((text ?? "none").trim() !== "none") {
      throw new Error(`the rounding “${text}” is unknown`);
    }
    return (value) => value;
  }
  const step = quantity(form[2], SPEEDS).si;
  return (value) => rounded(value, step, form[1] === "nearest");
}

/** A share of the limit, or a speed, so many times. */
function part(text, limit, count = 1n) {
  const one = isShare(text) ? times(limit.si, share(text)) : quantity(text, SPEEDS).si;
  return times(one, fraction(count));
}

/** The fastest speed that passes: limit, tolerance, rounding and guard band, exactly. */
function allowedSpeed(division) {
  const limit = quantity(division.get("limit"), SPEEDS);
  const tolerance = division.get("tolerance").trim();
  let allowed = limit.si;
  if (tolerance === "instrument accuracy") {
    allowed = plus(allowed, part(division.get("accuracy"), limit, BigInt(division.get("factor"))));
  } else if (tolerance !== "none") {
    allowed = plus(allowed, part(tolerance, limit));
  }
  allowed = rounding(division.get("round-limit"))(allowed);
  const acceptance = division.get("acceptance") ?? "simple";
  if (acceptance === "guarded acceptance") {
    allowed = minus(allowed, part(division.get("guard"), limit));
  } else if (acceptance === "guarded rejection") {
    allowed = plus(allowed, part(division.get("guard"), limit));
  } else if (acceptance !== "simple") {
    throw new Error(`the acceptance “${acceptance}” is unknown`);
  }
  return { si: allowed, unit: limit };
}

/** Whether a side of a limit keeps a figure. */
function keeps(side, comparison) {
  if (side !== undefined && side !== "at most" && side !== "below") {
    throw new Error(`the bound “${side}” is unknown`);
  }
  return side === "below" ? comparison < 0 : comparison <= 0;
}

/** The draw weight that counts, and the least that it can be; nothing where it is not known. */
function drawWeight(division, setUp) {
  const [asSet, certified] = ["drawWeight", "certifiedDrawWeight"].map((name) =>
    setUp[name] === undefined ? undefined : quantity(setUp[name], FORCES).si,
  );
  const counts = division.get("draw-weight") ?? "as set";
  if (counts !== "greater") {
    const one = counts === "certified" ? certified : asSet;
    return { exact: one, least: one };
  }
  if (asSet === undefined || certified === undefined) {
    return { exact: undefined, least: asSet ?? certified };
  }
  const more = compare(asSet, certified) > 0 ? asSet : certified;
  return { exact: more, least: more };
}

/** Whether an arrow has so many grains for each pound-force of draw weight. */
function reaches(arrow, draw, ratio) {
  const form = /^\s*([0-9.]+)\s*gr\/lbf?\s*$/.exec(ratio);
  if (form === null) {
    throw new Error(`“${ratio}” is no arrow mass for a draw weight`);
  }
  const grains = times(decimal(form[1]), MASSES.get("gr").size);
  return compare(times(arrow, FORCES.get("lbf").size), times(grains, draw)) >= 0;
}

/** The clauses on bow and arrow: broken, open for want of a figure, or kept. */
function equipment(division, setUp, arrow) {
  const has = (key) => division.get(key) !== undefined;
  const draw = drawWeight(division, setUp);
  if (draw.least !== undefined) {
    const force = (key) => quantity(division.get(key), FORCES).si;
    const tooWeak =
      has("least-draw-weight") &&
      draw.exact !== undefined &&
      compare(draw.exact, force("least-draw-weight")) < 0;
    const tooStrong = has("most-draw-weight") && compare(draw.least, force("most-draw-weight")) > 0;
    const tooLight =
      has("least-arrow") && arrow !== undefined && !reaches(arrow, draw.least, division.get("least-arrow"));
    if (tooWeak || tooStrong || tooLight) {
      return "not admitted";
    }
  }
  const asksDraw = ["least-arrow", "least-draw-weight", "most-draw-weight", "only-below"].some(has);
  const asksArrow = ["least-arrow", "energy", "only-below"].some(has);
  const missing = (asksArrow && arrow === undefined) || (asksDraw && draw.exact === undefined);
  return missing ? OPEN : "kept";
}

const sum = (speeds) => speeds.reduce(plus, fraction(0n));
const mean = (speeds) => divided(sum(speeds), fraction(BigInt(speeds.length)));
const sorted = (speeds) => [...speeds].sort(compare);

function median(speeds) {
  const order = sorted(speeds);
  return mean([order[(order.length - 1) >> 1], order[order.length >> 1]]);
}

/** How the readings that are in decide. */
class Shooting {
  constructor(division, admits) {
    this.admits = admits;
    this.way = division.get("decide");
    this.counted = division.get("counted");
    this.shots = division.get("shots");
    this.voids = division.get("voids");
    for (const [key, least] of [["counted", 1], ["shots", 1], ["voids", 0]]) {
      const many = division.get(key);
      if (!Number.isInteger(many) || many < least || many > MOST_SHOTS) {
        throw new Error(`${key} is no whole number from ${least} to ${MOST_SHOTS}`);
      }
    }
    this.spread = division.get("spread") === undefined ? undefined : quantity(division.get("spread"), SPEEDS).si;
    this.needed = { "k of n": division.get("within"), "first within": 1, highest: this.counted }[this.way];
    if (this.needed === undefined && this.way !== "mean" && this.way !== "median") {
      throw new Error(`the way to decide “${this.way}” is unknown`);
    }
  }

  /** With every counted reading in. */
  whole(readings) {
    const within =
      this.way === "mean"
        ? this.admits(mean(readings))
        : this.way === "median"
          ? this.admits(median(readings))
          : readings.filter(this.admits).length >= this.needed;
    return within ? "within" : "over";
  }

  /** With these in: decided where no reading still to come can change it. */
  decide(readings) {
    const missing = this.counted - readings.length;
    if (this.spread !== undefined && readings.length > 0) {
      const order = sorted(readings);
      if (compare(minus(order[order.length - 1], order[0]), this.spread) > 0) {
        return "not decided";
      }
    }
    if (missing > 0 && (this.spread !== undefined || this.way === "mean")) {
      return OPEN;
    }
    const ifSlow = this.whole([...readings, ...Array(missing).fill(VERY_SLOW)]);
    const ifFast = this.whole([...readings, ...Array(missing).fill(VERY_FAST)]);
    return ifSlow === ifFast ? ifSlow : OPEN;
  }

  /** The fewest further readings that can decide. */
  fewest(readings) {
    const missing = this.counted - readings.length;
    for (let more = 1; more < missing; more++) {
      for (let slow = 0; slow <= more; slow++) {
        const tried = [...readings, ...Array(slow).fill(VERY_SLOW), ...Array(more - slow).fill(VERY_FAST)];
        if (this.decide(tried) !== OPEN) {
          return more;
        }
      }
    }
    return missing;
  }

  /** Shot by shot; a void one is undefined. It ends at the first that leaves nothing open. */
  judge(taken) {
    const readings = [];
    let used = 0;
    for (const shot of [...taken, undefined]) {
      const outcome = this.decide(readings);
      if (outcome !== OPEN) {
        return outcome;
      }
      if (used - readings.length > this.voids || this.fewest(readings) > this.shots - used) {
        return this.overByWhatStands(taken) ? "over" : "not decided";
      }
      used++;
      if (shot !== undefined) {
        readings.push(shot);
      }
    }
    return OPEN;
  }

  /** Spent voids and shots do not help who is over by the readings that stand. */
  overByWhatStands(taken) {
    const standing = taken.filter((shot) => shot !== undefined).slice(0, this.counted);
    return standing.some((_, i) => this.decide(standing.slice(0, i + 1)) === "over");
  }

  /** The figure that decides, in words. */
  figure(readings, unit_) {
    const all = readings.length === this.counted;
    if (readings.length === 0) {
      return "";
    }
    if (this.way === "mean" || this.way === "median") {
      const value = this.way === "mean" ? mean(readings) : median(readings);
      return all ? `${this.way} ${shown(value, unit_)}` : `${this.way} of ${this.counted} not yet known`;
    }
    const within = readings.filter(this.admits);
    if (this.way === "highest") {
      return `highest ${shown(sorted(readings)[readings.length - 1], unit_)}`;
    }
    return this.way === "first within" && within.length > 0
      ? `first within ${shown(within[0], unit_)}`
      : `${within.length} of ${this.counted} within, ${this.needed} needed`;
  }
}

/**
 * What the rule says of a check: the outcome, or nothing while it is open; what is allowed, and the
 * figure; and in words what this page does not recompute.
 */
function judge(division, check) {
  const notes = [];
  const arrow = check.setUp.arrowMass === undefined ? undefined : quantity(check.setUp.arrowMass, MASSES).si;
  const bow = equipment(division, check.setUp, arrow);
  if (bow !== "kept") {
    return { outcome: bow, allowed: "", figure: "bow and arrow", notes };
  }
  const bounds = [];
  const words = [];
  let show = SPEEDS.get("ft/s");
  if (division.get("limit") !== "none") {
    const allowed = allowedSpeed(division);
    const below = division.get("only-below");
    show = SPEEDS.get(allowed.unit.symbol);
    if (below === undefined || !reaches(arrow, drawWeight(division, check.setUp).exact, below)) {
      bounds.push((speed) => keeps(division.get("bound"), compare(speed, allowed.si)));
      words.push(`${division.get("bound") === "below" ? "below " : ""}${shown(allowed.si, show)}`);
    }
  }
  if (division.get("energy") !== undefined) {
    const most = quantity(division.get("energy"), ENERGIES);
    show = division.get("limit") === "none" && most.symbol === "J" ? SPEEDS.get("m/s") : show;
    // Half the mass times the square of the speed; a speed below zero stands for a very slow one
    bounds.push((speed) => {
      const energy = times(HALF, times(arrow, times(speed, speed)));
      return speed.over < 0n || keeps(division.get("energy-bound"), compare(energy, most.si));
    });
    words.push(division.get("energy"));
  }
  if (bounds.length === 0) {
    return { outcome: "within", allowed: "no limit", figure: "", notes };
  }
  const raise = division.get("bow-correction");
  const round = rounding(division.get("round-reading"));
  const treated = (si) => round(raise === undefined ? si : times(si, plus(fraction(1n), share(raise))));
  const shooting = new Shooting(division, (speed) => bounds.every((bound) => bound(speed)));
  const taken = check.shots.map((shot) => (shot.counts ? treated(quantity(shot.speed, SPEEDS).si) : undefined));
  let outcome = shooting.judge(taken);
  const unticked = (division.get("conditions") ?? []).filter((one) => !check.ticked.has(one.trim()));
  if (unticked.length > 0 && (outcome === "within" || outcome === "over")) {
    outcome = OPEN;
    notes.push(`not ticked: ${unticked.join("; ")}`);
  }
  if (division.get("jump") !== undefined || division.get("outlier") !== undefined) {
    notes.push("whether a reading had to be asked about is not recomputed");
  }
  if (division.get("bands") !== undefined) {
    notes.push("how far over it is, with what follows, is not recomputed");
  }
  if (check.shots.some((shot) => shot.impossible)) {
    notes.push("that the bow cannot give a reading is taken from the entries");
  }
  const standing = taken.filter((shot) => shot !== undefined).slice(0, shooting.counted);
  return { outcome, allowed: words.join(" and "), figure: shooting.figure(standing, show), notes };
}
