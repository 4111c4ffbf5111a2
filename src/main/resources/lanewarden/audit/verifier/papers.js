// What checks rest on: rule books, rosters, the papers of the line and the seals of reports. Who put
// each in force, and what a rule book or the papers of the line changed.

/** Only the organizer signs these. */
const ORGANIZERS_ALONE = "but not with the organizer’s key";

/** What a rule book says of a division, as one line a key; a list is compared as it is written. */
const clauses = (division) => new Map([...division].map(([key, value]) => [key, JSON.stringify(value)]));

/** What the line is opened with, by which every reading is read. */
const OF_THE_LINE = new Map([
  ["instrument", "instrument"],
  ["profile", "sentence profile"],
  ["secondProfile", "second sentence profile"],
  ["settings", "settings"],
]);

/** What a paper says, key by key, each with the tables that it stands in; nothing where this page cannot read it. */
function sayings(text) {
  const said = new Map();
  const collect = (path, value) => {
    if (value instanceof Map) {
      value.forEach((inner, key) => collect(path === "" ? key : `${path}.${key}`, inner));
    } else if (Array.isArray(value) && value.some((one) => one instanceof Map)) {
      value.forEach((one, i) => collect(`${path}[${i + 1}]`, one));
    } else {
      said.set(path, JSON.stringify(value));
    }
  };
  try {
    collect("", readToml(text ?? ""));
    return said;
  } catch {
    return undefined;
  }
}

/** What one text says otherwise than another, in words: key from this to that. */
function changesOfText(before, now) {
  const [old, fresh] = [sayings(before), sayings(now)];
  if (old === undefined || fresh === undefined) {
    return ["something that this page cannot name: one of the two is written as it does not read"];
  }
  return [...new Set([...old.keys(), ...fresh.keys()])]
    .filter((key) => old.get(key) !== fresh.get(key))
    .map((key) => `${key} from ${old.get(key) ?? "nothing"} to ${fresh.get(key) ?? "nothing"}`);
}

class Papers {
  constructor(chain) {
    this.chain = chain;
    this.books = new Map();
    this.inForce = undefined;
    this.adopted = [];
    this.opened = undefined;
  }

  /** The rule book with this hash, if one was put in force. */
  book(sha256) {
    return this.books.get(sha256);
  }

  /** A rule book takes over. */
  ruleBook(entry, body) {
    if (entry.digest !== body.sha256) {
      throw new Error("the rule book’s text has another hash than is told with it");
    }
    const book = { divisions: new Map(), wrong: undefined, strange: entry.signer !== this.chain.organizer };
    try {
      const divisions = readToml(body.text).get("division");
      divisions.forEach((division) => book.divisions.set(division.get("code"), division));
    } catch (wrong) {
      book.wrong = wrong.message;
    }
    const before = this.books.get(this.inForce);
    this.inForce = body.sha256;
    this.books.set(body.sha256, book);
    this.tell(entry, "rule book", body, before === undefined ? "" : Papers.changes(before, book));
    this.organizerAlone(entry, "puts a rule book in force");
  }

  /** A roster takes over: any official may sign one, for late entries come that way. */
  roster(entry, body) {
    this.tell(entry, "roster", body, "");
  }

  /** The line opened; with the same papers as before there is nothing to tell. */
  line(entry, body) {
    const before = this.opened;
    this.opened = body;
    const changed = [...OF_THE_LINE.keys()].filter((key) => before?.[key] !== body[key]);
    if (changed.length === 0) {
      return;
    }
    const opened = `${this.when(entry)}: the line opened with ${body.instrument}, signed by ${this.chain.name(entry.signer)}.`;
    const words = before === undefined ? "" : ` It changes, ${changed.map((key) => Papers.changesOfLine(key, before[key], body[key])).join("; ")}.`;
    this.adopted.push({ entry: entry.seq, words: opened + words });
  }

  static changesOfLine(key, before, now) {
    const paper = OF_THE_LINE.get(key);
    if (key === "instrument" || before === undefined || now === undefined) {
      const told = (text) => (text === undefined ? "none" : key === "instrument" ? `“${text}”` : "one");
      return `the ${paper}: from ${told(before)} to ${told(now)}`;
    }
    const changes = changesOfText(before, now);
    return `in the ${paper}: ${changes.join(", ") || "nothing but order, comments or layout"}`;
  }

  /** The key that seals reports is stated. */
  seal(entry) {
    this.organizerAlone(entry, "states the seal of reports");
  }

  organizerAlone(entry, does) {
    if (entry.signer !== this.chain.organizer) {
      this.chain.fault(entry.seq, `Entry ${entry.seq} ${does}, ${ORGANIZERS_ALONE}: ${this.chain.name(entry.signer)} signed it.`);
    }
  }

  tell(entry, what, body, changes) {
    const reason = body.reason === undefined ? "" : ` Reason given: ${quoted(body.reason)}.`;
    const words = `${this.when(entry)}: the ${what} ${quoted(body.file)}, ${String(body.sha256).slice(0, 12)}…, signed by ${this.chain.name(entry.signer)}.${changes}${reason}`;
    this.adopted.push({ entry: entry.seq, words });
  }

  when(entry) {
    return `Entry ${entry.seq}, ${entry.says.at.slice(0, 19).replace("T", " ")} UTC`;
  }

  /** What one rule book says otherwise than the one before, division by division, in words. */
  static changes(before, now) {
    if (before.wrong !== undefined || now.wrong !== undefined) {
      return " What it changes cannot be told: one of the two cannot be read here.";
    }
    const codes = [...new Set([...before.divisions.keys(), ...now.divisions.keys()])];
    const changed = codes.flatMap((code) => Papers.changesOf(code, before.divisions.get(code), now.divisions.get(code)));
    return changed.length === 0 ? " It changes nothing in any division." : ` It changes ${changed.join("; ")}.`;
  }

  static changesOf(code, before, now) {
    if (before === undefined || now === undefined) {
      return [`division ${code}, which is ${before === undefined ? "new" : "gone"}`];
    }
    const [old, fresh] = [clauses(before), clauses(now)];
    return [...new Set([...old.keys(), ...fresh.keys()])]
      .filter((key) => old.get(key) !== fresh.get(key))
      .map((key) => `${key} of ${code} from ${old.get(key) ?? "nothing"} to ${fresh.get(key) ?? "nothing"}`);
  }
}
