// The checks as the entries tell them, and each signed verdict beside the one recomputed here.

/** Kinds of entries that this page looks into; all others are counted and named. */
const SET_UP = ["arrowMass", "drawWeight", "certifiedDrawWeight", "drawLength", "braceHeight"];

/** Who signed one of these, which name a check, does not rule on it; protests are no part of it. */
const OF_A_CHECK = new Set([
  "set-up-stated",
  "condition-ticked",
  "reading-taken",
  "line-refused",
  "reading-voided",
  "reading-flagged",
  "reading-kept",
  "verdict-given",
  "check-closed",
  "correction-made",
]);

/** The members that entries of a kind must have, each with its type in JSON. */
const MEMBERS = {
  "rule-book-adopted": { file: "string", sha256: "string", text: "string" },
  "roster-adopted": { file: "string", sha256: "string", text: "string" },
  "station-opened": { instrument: "string", profile: "string", program: "string" },
  "official-signed-in": { name: "string" },
  "check-opened": { bib: "string", name: "string", division: "string", attempt: "number" },
  "set-up-stated": { check: "number" },
  "condition-ticked": { check: "number", condition: "string" },
  "reading-taken": { check: "number", shot: "number", speed: "string", raw: "string", source: "string", instrument: "string", at: "string" },
  "reading-voided": { check: "number", reading: "number", reason: "string" },
  "reading-flagged": { check: "number", reading: "number", kind: "string", words: "string" },
  "reading-kept": { check: "number", reading: "number", reason: "string" },
  "verdict-given": { check: "number", ruleBook: "string", outcome: "string", reason: "string", readings: "object" },
  "check-closed": { check: "number" },
  "line-cleared": { stop: "number" },
};

/** What cannot be done while the line is stopped for safety. */
const NOT_WHILE_STOPPED = {
  "check-opened": "a check was opened",
  "reading-taken": "a reading was taken",
  "verdict-given": "a verdict was given",
  "verification-shot": "a shot of a verification was taken",
};

/** Throws where an entry lacks what its kind demands. */
function requireMembers(kind, body) {
  for (const [name, type] of Object.entries(MEMBERS[kind] ?? {})) {
    if (typeof body[name] !== type || body[name] === null || (type === "number" && !Number.isInteger(body[name]))) {
      throw new Error(`its “${name}” is missing or of another type`);
    }
  }
  if (kind === "verdict-given" && !(Array.isArray(body.readings) && body.readings.every(Number.isInteger))) {
    throw new Error("its “readings” are no list of entry numbers");
  }
}

class Checks {
  constructor(chain) {
    this.findings = chain.findings;
    this.papers = new Papers(chain);
    this.checks = new Map();
    this.docket = new Docket(chain, this.checks);
    this.held = new Map();
    this.stop = undefined;
    this.rows = [];
  }

  find(entry, words) {
    this.findings.push({ entry: entry.seq, words: `Entry ${entry.seq}: ${words}.`, against: true });
  }

  /** Takes the next entry; one that makes no sense is a finding, never the end. */
  take(entry) {
    if (entry.says === undefined) {
      return;
    }
    const stopped = NOT_WHILE_STOPPED[entry.says.kind];
    if (stopped !== undefined && this.stop !== undefined) {
      this.find(entry, `${stopped} although the line was not clear since entry ${this.stop}`);
    }
    try {
      requireMembers(entry.says.kind, entry.says.body);
      this[`on ${entry.says.kind}`]?.call(this, entry, entry.says.body);
      this.signedOf(entry, entry.says).forEach((check) => this.docket.note(check, entry.signer));
    } catch (wrong) {
      this.find(entry, `it cannot be understood (${wrong.message})`);
    }
  }

  /** The checks that somebody signs something of with an entry: at the line, a correction, a hold. */
  signedOf(entry, { kind, body }) {
    if (kind === "check-opened") {
      return [entry.seq];
    }
    if (kind === "correction-confirmed") {
      return [this.docket.correction(body.correction).check];
    }
    if (kind === "line-held") {
      this.held.set(entry.seq, body.checks);
    }
    if (kind === "line-held" || kind === "hold-lifted") {
      return this.held.get(body.hold ?? entry.seq) ?? [];
    }
    return OF_A_CHECK.has(kind) ? [body.check] : [];
  }

  check(number) {
    const check = this.checks.get(number);
    if (check === undefined) {
      throw new Error(`there is no check ${number}`);
    }
    return check;
  }

  shot(body) {
    const shot = this.check(body.check).shots.find((one) => one.seq === body.reading);
    if (shot === undefined) {
      throw new Error(`check ${body.check} has no reading ${body.reading}`);
    }
    return shot;
  }

  "on rule-book-adopted"(entry, body) {
    this.papers.ruleBook(entry, body);
  }

  "on roster-adopted"(entry, body) {
    this.papers.roster(entry, body);
  }

  "on station-opened"(entry, body) {
    this.papers.line(entry, body);
  }

  "on report-seal-adopted"(entry) {
    this.papers.seal(entry);
  }

  /** Whoever signs in does so under the name that the key was enrolled for. */
  "on official-signed-in"(entry, body) {
    const name = this.docket.chain.officials.get(entry.signer)?.name;
    if (body.name !== name) {
      this.find(entry, `“${body.name}” signed in with a key that was enrolled for ${name === undefined ? "no official" : `“${name}”`}`);
    }
  }

  "on line-stopped"(entry) {
    this.stop ??= entry.seq;
  }

  /** Only the stop that stands is ended. */
  "on line-cleared"(entry, body) {
    if (body.stop !== this.stop) {
      throw new Error(`no stop ${body.stop} of the line stands`);
    }
    this.stop = undefined;
  }

  "on check-opened"(entry, body) {
    const setUp = Object.fromEntries(SET_UP.map((name) => [name, body[name]]));
    const { bib, name, division, attempt, protest } = body;
    const check = { number: entry.seq, bib, name, division, attempt, protest, closed: false, reopened: false, setUp, book: this.papers.inForce, ticked: new Set(), shots: [], faulty: !entry.sound };
    this.checks.set(entry.seq, check);
    if (protest !== undefined) {
      this.docket.rechecked(check).forEach((wrong) => this.find(entry, wrong));
    }
  }

  /** What belongs to a check is signed while its archer stands at the line. */
  atTheLine(entry, body, what) {
    const check = this.check(body.check);
    if (check.closed && !(check.reopened && (what === "a verdict" || what === "a flag"))) {
      this.find(entry, `${what} stands behind the end of check ${check.number}, bib ${check.bib}`);
    }
    return check;
  }

  "on set-up-stated"(entry, body) {
    const check = this.atTheLine(entry, body, "a statement of bow and arrow");
    check.setUp = Object.fromEntries(SET_UP.map((name) => [name, body[name]]));
    this.fell(check, entry);
  }

  "on condition-ticked"(entry, body) {
    this.atTheLine(entry, body, "a tick").ticked.add(body.condition);
  }

  "on reading-taken"(entry, body) {
    const check = this.atTheLine(entry, body, "a reading");
    if (!check.closed && check.verdict !== undefined) {
      this.find(entry, `a reading was taken after the verdict on check ${check.number}, bib ${check.bib}`);
    }
    check.shots.push({ seq: entry.seq, speed: body.speed, typed: body.source === "typed", voided: false, impossible: false });
    check.faulty ||= !entry.sound;
  }

  "on reading-voided"(entry, body) {
    const shot = this.shot(body);
    shot.voided = true;
    this.fell(this.atTheLine(entry, body, "a reading that is declared void"), entry);
  }

  "on reading-flagged"(entry, body) {
    this.shot(body).impossible ||= body.kind === "impossible";
    this.atTheLine(entry, body, "a flag");
  }

  "on reading-kept"(entry, body) {
    this.shot(body);
    this.atTheLine(entry, body, "a reading that was let count");
  }

  "on check-closed"(entry, body) {
    this.atTheLine(entry, body, "another end").closed = true;
  }

  "on protest-filed"(entry, body) {
    this.check(body.check);
    this.noEffect(entry, "protest", this.docket.filed(entry, body));
  }

  "on protest-ruled"(entry, body) {
    this.noEffect(entry, "ruling", this.docket.ruled(entry, body));
  }

  "on correction-made"(entry, body) {
    this.check(body.check);
    this.docket.corrected(entry, body);
  }

  /** What has an objection against it changes nothing, though it be well signed. */
  noEffect(entry, what, against) {
    if (against !== undefined) {
      this.find(entry, `the ${what} has no effect: ${against}`);
    }
    return against !== undefined;
  }

  /** A correction takes effect when another person than the one who made it confirms it. */
  "on correction-confirmed"(entry, body) {
    const made = this.docket.correction(body.correction);
    const check = this.check(made.check);
    const divisions = this.papers.book(check.book)?.divisions;
    if (this.noEffect(entry, "confirmation", this.docket.confirmed(entry, made, check, divisions))) {
      return;
    }
    if (made.what === "bib") {
      Object.assign(check, { bib: made.bib, name: made.name });
      return;
    }
    if (made.what === "division") {
      check.division = made.division;
    } else {
      this.shot(made).speed = made.speed;
    }
    check.reopened = true;
    this.fell(check, entry);
  }

  /** A verdict that stood rests on something that was changed: it counts no more. */
  fell(check, entry) {
    if (check.verdict !== undefined) {
      check.verdict.takenBack = entry.seq;
      check.verdict = undefined;
    }
  }

  "on verdict-given"(entry, body) {
    const check = this.atTheLine(entry, body, "a verdict");
    this.fell(check, entry);
    const listed = new Set(body.readings);
    const shots = check.shots.map((shot) => ({ ...shot, counts: !shot.voided && (!shot.impossible || listed.has(shot.seq)) }));
    const row = { entry: entry.seq, at: entry.says.at, check, shots, signed: body.outcome, reason: body.reason, faulty: !entry.sound || check.faulty };
    check.verdict = row;
    this.rows.push(row);
    const counted = shots.filter((shot) => shot.counts).map((shot) => shot.seq);
    if (String(counted) !== String(body.readings)) {
      this.find(entry, `the verdict lists the readings ${body.readings.join(", ") || "none"}, but ${counted.join(", ") || "none"} stood`);
    }
    if (body.ruleBook !== check.book) {
      this.find(entry, "the verdict names another rule book than was in force when the check was opened");
    }
    this.recompute(row, entry, body);
  }

  recompute(row, entry, body) {
    const book = this.papers.book(body.ruleBook);
    const division = book?.divisions.get(row.check.division);
    if (division === undefined) {
      row.unknown = book?.wrong ?? `the ledger holds no rule for division ${row.check.division} under the hash that the verdict names`;
      return;
    }
    try {
      Object.assign(row, judge(division, { ...row.check, shots: row.shots }));
    } catch (wrong) {
      row.unknown = wrong.message;
      return;
    }
    if (book.strange) {
      row.strange = true;
      row.notes = [...row.notes, "by a rule book that the organizer did not put in force"];
    }
    if (row.outcome !== row.signed) {
      const found = row.outcome ?? "still open";
      this.find(entry, `bib ${row.check.bib} was signed as “${row.signed}”, but recomputed here it is “${found}”`);
    }
  }

  /** At the end: checks that the rule decided, and of which no verdict stands. */
  finish() {
    const open = [...this.checks.values()].filter((check) => check.verdict === undefined);
    for (const check of open) {
      const division = this.papers.book(check.book)?.divisions.get(check.division);
      const shots = check.shots.map((shot) => ({ ...shot, counts: !shot.voided && !shot.impossible }));
      let found;
      try {
        found = division === undefined ? undefined : judge(division, { ...check, shots });
      } catch {
        found = undefined;
      }
      const asks = division?.get("jump") !== undefined || division?.get("outlier") !== undefined;
      if (found !== undefined && found.outcome !== OPEN) {
        const words = `check ${check.number}, bib ${check.bib}, has no verdict, but by the readings that stand it is “${found.outcome}”`;
        const doubt = asks ? "; its rule may have asked about a reading, which this page does not compute" : "";
        this.findings.push({ entry: check.number, words: `Entry ${check.number}: ${words}${doubt}.`, against: !asks });
      } else if (found === undefined) {
        this.findings.push({ entry: check.number, words: `Entry ${check.number}: check ${check.number}, bib ${check.bib}, has no verdict, and what its rule says of it cannot be computed here.`, against: false });
      }
    }
  }
}
