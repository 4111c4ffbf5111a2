// Protests with their rulings, and corrections: what each amounts to, and what speaks against it.

const ANSWERS = ["upheld", "dismissed"];

/** Whether two checks are of one archer by one division's rule, as corrected until now. */
const ofTheSame = (one, other) => one.bib === other.bib && one.division === other.division;

class Docket {
  /** Who holds which key comes from the chain, the checks from those that are folded beside it. */
  constructor(chain, checks) {
    this.chain = chain;
    this.checks = checks;
    this.protests = new Map();
    this.corrections = new Map();
    this.signers = new Map();
    this.standing = new Map();
  }

  /** Somebody signed something of a check: who did does not rule on it. */
  note(check, signer) {
    this.signers.set(check, (this.signers.get(check) ?? new Set()).add(signer));
  }

  protest(number) {
    const protest = this.protests.get(number);
    if (protest === undefined) {
      throw new Error(`there is no protest ${number}`);
    }
    return protest;
  }

  /** A recheck stands beside the check in dispute; everything that is wrong with it, in words. */
  rechecked(recheck) {
    const protest = this.protest(recheck.protest);
    const settled = protest.rechecks.find((one) => this.settles(one));
    protest.rechecks.push(recheck.number);
    const original = this.checks.get(protest.check);
    const opened = `a recheck was opened under protest ${protest.number}`;
    return [
      ...(protest.against === undefined ? [] : [`${opened}, which has no effect`]),
      ...(protest.ruling === undefined ? [] : [`${opened}, which had its ruling`]),
      ...(settled === undefined ? [] : [`${opened}, although recheck ${settled} came to an outcome`]),
      ...(ofTheSame(recheck, original) && recheck.attempt === original.attempt
        ? []
        : [`${opened}, of another bib, division or attempt than check ${original.number}`]),
    ];
  }

  outcome(check) {
    return this.checks.get(check)?.verdict?.signed;
  }

  settles(check) {
    return !["not decided", undefined].includes(this.outcome(check));
  }

  /** Why a protest about a check is none, though it be well signed; nothing where it is one. */
  undisputable(check) {
    return check.protest !== undefined
      ? `check ${check.number} is a recheck, which stands beside the check in dispute`
      : this.goesOn(check)
        ? `check ${check.number} went on, and had come to nothing yet`
        : undefined;
  }

  goesOn(check) {
    return check.verdict === undefined && !check.closed;
  }

  /** Takes a protest; gives back why it has no effect. */
  filed(entry, body) {
    const against = this.undisputable(this.checks.get(body.check));
    this.protests.set(entry.seq, { ...body, number: entry.seq, against, rechecks: [], ruling: undefined });
    return against;
  }

  isOrganizers(...keys) {
    return keys.includes(this.chain.organizer);
  }

  /** What ties who rules to those who signed something of a check, in words. */
  own(check, signer) {
    const { holders } = this.chain;
    return [...(this.signers.get(check) ?? [])].flatMap((key) =>
      this.isOrganizers(key)
        ? [`something of check ${check} is signed with the organizer’s key, which names nobody`]
        : holders.areOne(key, signer)
          ? [`${this.chain.name(signer)} signed something of check ${check}`]
          : [],
    );
  }

  /** Why a ruling changes nothing; nothing where it does. */
  against(protest, body, signer) {
    const all = [protest.check, ...protest.rechecks];
    const other = body.stands !== protest.check;
    const own = all.flatMap((one) => this.own(one, signer))[0];
    if (!this.chain.judges.has(signer)) {
      return `${this.chain.name(signer)} was not enrolled as a judge at the time`;
    }
    if (own !== undefined) {
      return own;
    }
    if (protest.against !== undefined) {
      return "the protest has no effect itself";
    }
    if (protest.ruling !== undefined) {
      return `the protest had its ruling (entry ${protest.ruling.entry})`;
    }
    if (this.goesOn(this.checks.get(protest.check))) {
      return `check ${protest.check}, which is in dispute, went on`;
    }
    if (protest.rechecks.some((one) => !this.checks.get(one).closed)) {
      return "a recheck was still at the line";
    }
    if (!all.includes(body.stands)) {
      return `check ${body.stands} is neither the one in dispute nor a recheck of it`;
    }
    if (other && !ofTheSame(this.checks.get(body.stands), this.checks.get(protest.check))) {
      return `check ${body.stands} is of another bib or division than check ${protest.check}`;
    }
    if (other && !this.settles(body.stands)) {
      return `recheck ${body.stands} came to no outcome`;
    }
    return other && body.ruling === "dismissed" ? "it dismisses the protest, and yet lets another check stand" : undefined;
  }

  /** Takes a ruling; gives back why it has no effect. */
  ruled(entry, body) {
    const protest = this.protest(body.protest);
    if (!ANSWERS.includes(body.ruling)) {
      throw new Error(`“${body.ruling}” is no ruling`);
    }
    const against = this.against(protest, body, entry.signer);
    if (against === undefined) {
      protest.ruling = { ...body, entry: entry.seq, judge: this.chain.name(entry.signer) };
      this.standing.set(protest.check, protest);
    }
    return against;
  }

  corrected(entry, body) {
    this.corrections.set(entry.seq, { ...body, number: entry.seq, signer: entry.signer, by: this.chain.name(entry.signer), confirmed: undefined });
  }

  correction(number) {
    const made = this.corrections.get(number);
    if (made === undefined) {
      throw new Error(`there is no correction ${number}`);
    }
    return made;
  }

  /** What stands in a check where a correction says what is right, and what that is. */
  change(made, check) {
    if (made.what === "bib") {
      return [`${check.bib} ${check.name}`, `${made.bib} ${made.name}`];
    }
    if (made.what === "division") {
      return [check.division, made.division];
    }
    const shot = check.shots.find((one) => one.seq === made.reading);
    if (made.what !== "reading" || shot === undefined) {
      throw new Error(`check ${made.check} has no such ${made.what}`);
    }
    return [shot.speed, made.speed];
  }

  /** Whether a ruling lets a recheck count for another check, and this is one of the two. */
  bearsRuling(check) {
    return [...this.standing.values()].some(({ check: original, ruling }) => ruling.stands !== original && [original, ruling.stands].includes(check));
  }

  /** Takes a confirmation; gives back why it has no effect. */
  confirmed(entry, made, check, divisions) {
    const [before, after] = this.change(made, check);
    const measured = made.what === "reading" && !check.shots.some((one) => one.seq === made.reading && one.typed);
    const against =
      this.chain.holders.areOne(made.signer, entry.signer)
        ? `${this.chain.name(entry.signer)} made correction ${made.number}, and nobody confirms their own`
        : this.isOrganizers(made.signer, entry.signer)
          ? `one of its keys is the organizer’s, which names nobody: no second person is shown`
        : made.confirmed !== undefined
          ? `it had been confirmed by entry ${made.confirmed.entry}`
          : made.what !== "reading" && this.bearsRuling(made.check)
            ? "by a ruling a recheck counts in the place of the check in dispute, and the ruling rests on the bib and the division of both"
          : before === after
            ? "it changes nothing"
            : made.what === "division" && divisions?.has(made.division) !== true
              ? `the rule book of the check has no division ${made.division}`
              : measured
                ? "the reading was measured, and only a typed one can be corrected"
                : undefined;
    if (against === undefined) {
      made.confirmed = { entry: entry.seq, by: this.chain.name(entry.signer), before, after };
    }
    return against;
  }

  /** What a check amounts to beside others, in words: a recheck, or not the one that counts. */
  place(check) {
    if (check.protest !== undefined) {
      const protest = this.protests.get(check.protest);
      const counts = protest?.ruling?.stands === check.number && this.standing.get(protest.check) === protest;
      return `recheck beside check ${protest?.check}${counts ? `: counts in its place (ruling ${protest.ruling.entry})` : "; does not count by itself"}`;
    }
    const ruling = this.standing.get(check.number)?.ruling;
    return ruling === undefined || ruling.stands === check.number ? "" : `does not count: check ${ruling.stands} does (ruling ${ruling.entry})`;
  }

  told(number) {
    const check = this.checks.get(number);
    return `check ${number} (bib ${check.bib}, ${this.outcome(number) ?? "no outcome"})`;
  }

  /** Every protest and correction in words, in their order. */
  words() {
    const protests = [...this.protests.values()].map((one) => {
      const beside = one.rechecks.length === 0 ? "No recheck." : `Rechecked: ${one.rechecks.map((each) => this.told(each)).join(", ")}.`;
      const end =
        one.against !== undefined
          ? `It has no effect: ${one.against}.`
          : one.ruling === undefined
          ? `No ruling with effect: check ${one.check} counts.`
          : `${one.ruling.ruling === "upheld" ? "Upheld" : "Dismissed"} by ${one.ruling.judge} (entry ${one.ruling.entry}), a judge who signed nothing of ${one.rechecks.length === 0 ? "this check" : "these checks"} with any key of theirs: check ${one.ruling.stands} counts.`;
      return { entry: one.number, words: `${one.occasion} ${one.number} against ${this.told(one.check)}, filed by ${quoted(one.by)}. ${beside} ${end}`, open: one.ruling === undefined };
    });
    const corrections = [...this.corrections.values()].map((one) => {
      const end =
        one.confirmed === undefined
          ? "No second person confirmed it: it has no effect."
          : `From ${one.confirmed.before} to ${one.confirmed.after}, confirmed by a second person, ${one.confirmed.by} (entry ${one.confirmed.entry}).`;
      return { entry: one.number, words: `correction ${one.number} of the ${one.what} of check ${one.check}, made by ${one.by}. ${end}`, open: one.confirmed === undefined };
    });
    return [...protests, ...corrections].map((one) => ({ ...one, words: one.words[0].toUpperCase() + one.words.slice(1) }));
  }
}
