// As much of TOML 1.0 as rule books, profiles and settings use: tables, arrays of tables, one-line keys, texts in one pair
// of quotes, whole numbers, true and false, dates, and lists. Anything else is refused, not guessed.

class TomlText {
  constructor(text) {
    this.text = text;
    this.at = 0;
  }

  refuse(why) {
    const line = this.text.slice(0, this.at).split("\n").length;
    throw new Error(`line ${line} of the text: ${why}`);
  }

  /** Takes what fits here, or nothing. */
  take(pattern) {
    pattern.lastIndex = this.at;
    const found = pattern.exec(this.text);
    if (found !== null) {
      this.at = pattern.lastIndex;
    }
    return found;
  }

  blanks() {
    this.take(/(?:[ \t\r\n]|#[^\n]*)*/y);
  }

  lineEnd() {
    this.take(/[ \t]*(?:#[^\n]*)?/y);
    if (this.at < this.text.length && this.take(/\r?\n/y) === null) {
      this.refuse("something stands behind the value that this page cannot read");
    }
  }

  key() {
    const bare = this.take(/[A-Za-z0-9_-]+/y);
    if (bare !== null) {
      return bare[0];
    }
    const next = this.text[this.at];
    return next === '"' || next === "'" ? this.quoted() : this.refuse("a key is missing");
  }

  quoted() {
    if (this.take(/"""|'''/y) !== null) {
      this.refuse("a text of several lines is more than this page reads");
    }
    const literal = this.take(/'([^'\n]*)'/y);
    if (literal !== null) {
      return literal[1];
    }
    const basic = this.take(/"((?:[^"\\\n]|\\.)*)"/y);
    if (basic === null) {
      this.refuse("a text is not closed");
    }
    return basic[1].replace(/\\(?:u([0-9A-Fa-f]{4})|U([0-9A-Fa-f]{8})|(.))/g, (_, u, U, sign) => {
      if (sign === undefined) {
        return String.fromCodePoint(parseInt(u ?? U, 16));
      }
      const signs = { b: "\b", t: "\t", n: "\n", f: "\f", r: "\r", '"': '"', "\\": "\\" };
      return Object.hasOwn(signs, sign) ? signs[sign] : this.refuse(`\\${sign} is unknown`);
    });
  }

  value() {
    const next = this.text[this.at];
    if (next === '"' || next === "'") {
      return this.quoted();
    }
    if (this.take(/\[/y) !== null) {
      return this.list();
    }
    const truth = this.take(/true|false/y);
    if (truth !== null) {
      return truth[0] === "true";
    }
    const date = this.take(/\d{4}-\d\d-\d\d(?:[T ][\d:.]+(?:Z|[+-]\d\d:\d\d)?)?/y);
    if (date !== null) {
      return date[0];
    }
    const number = this.take(/[+-]?\d+(?:_\d+)*(?![\d.eE_xob])/y);
    return number === null
      ? this.refuse("a value is written in a way that this page does not read")
      : Number(number[0].replaceAll("_", ""));
  }

  list() {
    const items = [];
    this.blanks();
    while (this.take(/\]/y) === null) {
      items.push(this.value());
      this.blanks();
      if (this.take(/,/y) === null && this.text[this.at] !== "]") {
        this.refuse("a list is not closed");
      }
      this.blanks();
    }
    return items;
  }
}

/** The tables of a rule book: one map by name, and for each [[name]] a list of maps. */
function readToml(text) {
  const toml = new TomlText(text);
  const root = new Map();
  let table = root;
  for (toml.blanks(); toml.at < text.length; toml.blanks()) {
    const header = toml.take(/(\[\[?)[ \t]*([A-Za-z0-9_-]+)[ \t]*(\]\]?)/y);
    if (header !== null) {
      table = new Map();
      const many = header[1] === "[[";
      const known = root.get(header[2]);
      if (header[1].length !== header[3].length || (known !== undefined && Array.isArray(known) !== many)) {
        toml.refuse("a table is written in a way that this page does not read");
      }
      if (!many && known !== undefined) {
        toml.refuse(`the table ${header[2]} stands twice`);
      }
      root.set(header[2], many ? [...(known ?? []), table] : table);
    } else {
      const key = toml.key();
      if (toml.take(/[ \t]*=[ \t]*/y) === null) {
        toml.refuse("no = stands behind a key, or the key has several parts");
      }
      if (table.has(key)) {
        toml.refuse(`the key ${key} stands twice`);
      }
      table.set(key, toml.value());
    }
    toml.lineEnd();
  }
  return root;
}
