// The entries in their order: sequence, links, station, and who may sign.

/** Which keys are one person's: those enrolled under one name, and the names of one key. */
class Holders {
  constructor() {
    this.byKey = new Map();
    this.byName = new Map();
    this.known = 0;
  }

  /**
   * Names are the same if their letters and digits are, in whatever case and however set apart,
   * and whatever stands between them that nobody can see.
   */
  static plain(name) {
    const seen = name.replace(/[\p{Cf}\p{Default_Ignorable_Code_Point}]/gu, "");
    return seen.normalize("NFKC").toLowerCase().replace(/[^\p{L}\p{M}\p{N}]+/gu, " ").trim();
  }

  note(key, asEnrolled) {
    const name = Holders.plain(asEnrolled);
    const named = this.byName.get(name);
    const holder = this.byKey.get(key) ?? named ?? this.known++;
    this.byKey.set(key, holder);
    this.byName.set(name, holder);
    if (named !== undefined && named !== holder) {
      [this.byKey, this.byName].forEach((all) => all.forEach((one, each) => one === named && all.set(each, holder)));
    }
  }

  /** Whether one person holds both. */
  areOne(key, other) {
    return key === other || (this.byKey.has(key) && this.byKey.get(key) === this.byKey.get(other));
  }
}

class Chain {
  constructor() {
    this.faults = [];
    this.findings = [];
    this.officials = new Map();
    this.judges = new Set();
    this.holders = new Holders();
    this.keys = new Map();
    this.hashes = new Map();
    this.kinds = new Map();
    this.entries = 0;
    this.expected = 1;
    this.link = "A".repeat(43);
    this.organizer = undefined;
    this.station = undefined;
    this.head = undefined;
    this.before = undefined;
  }

  fault(entry, words) {
    this.faults.push({ entry, words });
  }

  /** Whose a key is by the last enrolment before. */
  name(signer) {
    return signer === this.organizer ? "the organizer" : (this.officials.get(signer)?.name ?? `the key ${signer}`);
  }

  /** Tries everything about a line that needs no neighbour; the key is found by its thumbprint. */
  async examine(entry) {
    if (entry.jws !== undefined) {
      entry.hash = await sha256(entry.jws);
    }
    const key = this.keys.get(entry.signer);
    if (key !== undefined && entry.signed !== undefined) {
      entry.good = await fits(key, entry.signature, entry.signed);
    }
    return entry;
  }

  /** Notes the keys that an entry names, whoever signed it: a thumbprint fits one key alone. */
  async note(entry) {
    if (["ledger-opened", "official-enrolled", "official-suspended"].includes(entry.says?.kind)) {
      entry.names = await namedKey(entry.says.body.organizer ?? entry.says.body.official);
      if (entry.names !== undefined) {
        this.keys.set(entry.names.thumbprint, entry.names.key);
      }
    }
  }

  maySign(thumbprint) {
    return thumbprint === this.organizer || this.officials.get(thumbprint)?.enrolled === true;
  }

  /** Judges the next entry. */
  judge(entry) {
    this.entries++;
    const seq = entry.seq ?? this.expected;
    entry.seq = seq;
    const before = this.faults.length;
    const name = entry.says === undefined && entry.jws === undefined ? `Line ${entry.number}` : `Entry ${seq}`;
    entry.faults.forEach((words) => this.fault(seq, `${name} ${words}.`));
    this.place(seq);
    if (entry.good === false) {
      this.fault(seq, `Entry ${seq} has a signature that does not fit its bytes.`);
    }
    if (entry.says !== undefined) {
      this.judgeWords(entry, seq);
    }
    this.link = entry.hash === undefined ? undefined : toBase64Url(entry.hash);
    if (entry.hash !== undefined) {
      const short = toHex(entry.hash.subarray(0, 6));
      this.hashes.set(seq, short);
      this.head = { seq, short };
    }
    entry.sound = this.faults.length === before;
  }

  place(seq) {
    if (seq > this.expected) {
      const last = seq - 1;
      this.fault(
        this.expected,
        last === this.expected ? `Entry ${last} is missing.` : `Entries ${this.expected} to ${last} are missing.`,
      );
      this.link = undefined;
    } else if (seq < this.expected) {
      this.fault(seq, `Entry ${seq} stands after entry ${this.expected - 1}.`);
    }
    this.expected = Math.max(this.expected, seq + 1);
  }

  judgeWords(entry, seq) {
    const { station, prev, kind, at } = entry.says;
    this.kinds.set(kind, (this.kinds.get(kind) ?? 0) + 1);
    if (this.link !== undefined && this.link !== prev) {
      this.fault(seq, `Entry ${seq} does not follow from the bytes of the entry before it.`);
    }
    this.station ??= station;
    if (station !== this.station) {
      this.fault(seq, `Entry ${seq} is of station ${station}, not ${this.station}.`);
    }
    if (this.before !== undefined && at < this.before) {
      this.findings.push({ entry: seq, words: `Entry ${seq} is dated before the one it follows: the clock was set back.`, against: false });
    }
    this.before = at;
    if (seq === 1) {
      this.opens(entry);
    } else if (!this.maySign(entry.signer)) {
      const suspended = this.officials.get(entry.signer);
      this.fault(
        seq,
        suspended === undefined
          ? `Entry ${seq} is signed with the key ${entry.signer}, which nobody enrolled before it.`
          : `Entry ${seq} is signed by ${suspended.name}, whom entry ${suspended.suspendedBy} suspends.`,
      );
    } else if (entry.good === true && station === this.station) {
      this.roll(entry, seq, kind);
    }
  }

  opens(entry) {
    const named = entry.says.kind === "ledger-opened" ? entry.names : undefined;
    if (named === undefined || named.thumbprint !== entry.signer) {
      this.fault(1, "Entry 1 does not open a ledger with the key that signed it, as the organizer’s.");
    } else if (entry.good === true) {
      this.organizer = named.thumbprint;
    }
  }

  roll(entry, seq, kind) {
    const { body } = entry.says;
    const known = this.officials.get(entry.names?.thumbprint);
    if (kind === "ledger-opened") {
      this.fault(seq, `Entry ${seq} opens the ledger a second time.`);
    } else if (kind === "official-enrolled" || kind === "official-suspended") {
      const does = kind === "official-enrolled" ? "enrols" : "suspends";
      if (entry.signer !== this.organizer) {
        this.fault(seq, `Entry ${seq} ${does} an official, but the organizer did not sign it.`);
      } else if (entry.names === undefined) {
        this.fault(seq, `Entry ${seq} ${does} an official without a key.`);
      } else if (does === "suspends" && known?.enrolled !== true) {
        this.fault(seq, `Entry ${seq} suspends a key that may not sign anyway.`);
      } else if (does === "suspends") {
        known.enrolled = false;
        known.suspendedBy = seq;
        this.judges.delete(entry.names.thumbprint);
      } else if (typeof body.name !== "string" || body.name.trim() === "") {
        this.fault(seq, `Entry ${seq} enrols an official without a name.`);
      } else if (this.maySign(entry.names.thumbprint)) {
        this.fault(seq, `Entry ${seq} enrols a key that may sign already.`);
      } else {
        this.holders.note(entry.names.thumbprint, body.name);
        this.officials.set(entry.names.thumbprint, { name: body.name, role: body.role, enrolled: true, since: seq });
        this.judges[body.role === "judge" ? "add" : "delete"](entry.names.thumbprint);
      }
    }
  }

  /** What is wrong with heads from slips and reports; throws where one has another form. */
  against(text) {
    return text
      .split(/[\s,;]+/)
      .filter((head) => head !== "")
      .flatMap((head) => {
        const form = /^([1-9][0-9]{0,14})-([0-9a-f]{12})$/.exec(head.toLowerCase());
        if (form === null) {
          throw new Error(`“${head}” is no head: that is a number, a dash and 12 digits 0 to 9 or a to f.`);
        }
        const seq = Number(form[1]);
        const hash = this.hashes.get(seq);
        if (hash === form[2]) {
          return [];
        }
        const why =
          hash !== undefined
            ? `but entry ${seq} has ${seq}-${hash}: other entries stand here than when it was printed`
            : seq >= this.expected
              ? `but these entries end at ${this.expected - 1}: what came after was cut off`
              : "but that entry is not here";
        return [{ entry: seq, words: `A slip or report shows head ${head}, ${why}.` }];
      });
  }
}
