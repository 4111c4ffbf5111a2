// The page: takes the file, shows how far it is, and what was found.

const at = (id) => document.getElementById(id);
/** So many milliseconds of work at a time, and so many entries: the page answers in between. */
const SLICE = 40;
const MOST_IN_FLIGHT = 200;
const ROWS_AT_ONCE = 200;
const SHAPES = { within: "✓", over: "✕", "not decided": "?", "not admitted": "–" };
const COLOURS = { within: "good", over: "wrong" };
let chain;

/** A text in which nothing hides or turns round what stands beside it: such signs stand as their numbers. */
const plain = (text) => text.replace(/[\p{Cc}\p{Cf}\p{Zl}\p{Zp}]/gu, (sign) => `[U+${sign.codePointAt(0).toString(16).toUpperCase().padStart(4, "0")}]`);

/** An element with a class and with texts or elements in it; texts are never read as HTML. */
function element(name, style, ...inside) {
  const made = document.createElement(name);
  if (style !== "") {
    made.className = style;
  }
  made.append(...inside.map((one) => (typeof one === "string" ? plain(one) : one)));
  return made;
}

// A message comes at once, where a timer in a loop is kept waiting.
const turn = new MessageChannel();
const pause = () =>
  new Promise((go) => {
    turn.port1.onmessage = go;
    turn.port2.postMessage("");
  });
const count = (number, one, many = `${one}s`) => `${number.toLocaleString("en")} ${number === 1 ? one : many}`;

/** Reads lines for one slice of time and lets the browser try each; where the next slice begins. */
async function slice(lines, from, number, found) {
  const until = performance.now() + SLICE;
  const most = Math.min(lines.length, from + MOST_IN_FLIGHT);
  const tried = [];
  do {
    const entry = readLine(lines[from + tried.length], number + tried.length + 1);
    await found.note(entry);
    if (entry.says?.kind === "rule-book-adopted") {
      entry.digest = toHex(await sha256(toUtf8(String(entry.says.body.text))));
    }
    tried.push(found.examine(entry));
  } while (from + tried.length < most && performance.now() < until);
  return Promise.all(tried);
}

/** Reads and tries the whole file. */
async function verify(file) {
  const found = new Chain();
  const checks = new Checks(found);
  let number = 0;
  let bytes = 0;
  for await (const { lines, whole } of linesOf(file)) {
    for (let from = 0; from < lines.length; ) {
      const entries = await slice(lines, from, number, found);
      for (const entry of entries) {
        found.judge(entry);
        checks.take(entry);
        bytes += lines[from++].length + 1;
      }
      number += entries.length;
      at("count").textContent = count(number, "entry", "entries");
      at("progress").value = bytes / file.size;
      await pause();
    }
    if (!whole) {
      found.fault(found.expected - 1, `Line ${number} does not end: the file was cut there.`);
    }
  }
  if (number === 0) {
    found.fault(0, "The file holds no entry, not even the first.");
  }
  checks.finish();
  return { found, rows: checks.rows, docket: checks.docket, papers: checks.papers };
}

const LOOKS = { good: "✓", wrong: "✕", open: "?" };

function answer(look, word, words) {
  const line = element("li", look);
  const shape = element("span", "shape", LOOKS[look]);
  shape.ariaHidden = "true";
  line.append(shape, element("span", "", element("b", "", word), ` ${words}`));
  return line;
}

/** Compares with what is on paper; what differs is a fault like the others. */
function onPaper(found) {
  const published = at("organizer").value.trim();
  const heads = at("heads").value.trim();
  const answers = [];
  let faults = [];
  if (published !== "" && published !== found.organizer) {
    faults.push({ entry: 1, words: `The published thumbprint is ${published}, but these entries rest on ${found.organizer ?? "no sound key"}.` });
  }
  try {
    faults = faults.concat(found.against(heads));
  } catch (formless) {
    answers.push(answer("wrong", "Not compared:", formless.message));
  }
  if (faults.length > 0) {
    answers.push(answer("wrong", "Not as on paper:", faults.map((one) => one.words).join(" ")));
  } else if (answers.length === 0 && (published !== "" || heads !== "")) {
    const what = [published === "" ? "" : "the organizer’s thumbprint", heads === "" ? "" : "every head"];
    answers.push(answer("good", "As on paper:", `${what.filter((one) => one !== "").join(" and ")} agrees.`));
  }
  return { answers, faults };
}

/** How many protests and corrections there are, and of how many nothing came yet. */
function onDocket() {
  const all = chain.docket.words();
  if (all.length === 0) {
    return [];
  }
  const open = all.filter((one) => one.open).length;
  const many = count(all.length, "protest or correction", "protests and corrections");
  return [answer(open === 0 ? "good" : "open", `${many}:`, open === 0 ? "each ruled by a judge, or confirmed by a second person; told below." : `${open} without effect yet; told below.`)];
}

function showAnswers() {
  const paper = onPaper(chain.found);
  const faults = [...chain.found.faults, ...paper.faults];
  const differ = chain.rows.filter((row) => row.unknown === undefined && row.outcome !== row.signed).length;
  const unknown = chain.rows.filter((row) => row.unknown !== undefined).length;
  const strange = chain.rows.filter((row) => row.strange === true && row.outcome === row.signed).length;
  const follow = chain.rows.length - unknown - differ - strange;
  const sound = chain.found.faults.length === 0;
  const against = chain.found.findings.filter((one) => one.against).length - differ;
  const answers = [
    sound
      ? answer("good", "Sound:", "every signature and every link holds.")
      : answer("wrong", "Not sound:", `${count(chain.found.faults.length, "fault")}, listed below.`),
    ...(differ > 0
      ? [answer("wrong", `${count(differ, "verdict does", "verdicts do")} not follow`, "from the signed readings and rule; listed below.")]
      : []),
    ...(against > 0
      ? [answer("wrong", `${count(against, "contradiction")}:`, "what was signed goes against itself; listed below.")]
      : []),
    ...(follow > 0
      ? [answer("good", count(follow, "verdict follows", "verdicts follow"), "from the signed readings and rule.")]
      : []),
    ...(strange > 0
      ? [answer("wrong", `${count(strange, "verdict follows", "verdicts follow")} only`, "from a rule book that the organizer did not put in force; the table says which.")]
      : []),
    ...(unknown > 0 ? [answer("wrong", `${count(unknown, "verdict")} not computed:`, "the table says why.")] : []),
    ...onDocket(),
    ...paper.answers,
  ];
  at("answers").replaceChildren(...answers);
  at("spoken").textContent = answers.map((one) => one.lastChild.textContent).join(" ");
  showList("fault", faults);
  showList("finding", chain.found.findings);
  showList("case", chain.docket.words());
  showList("paper", chain.papers.adopted);
}

function showList(what, all) {
  at(`${what}-part`).hidden = all.length === 0;
  const items = [...all].sort((a, b) => a.entry - b.entry).map((one) => element("li", "", one.words));
  at(`${what}s`).replaceChildren(...items);
}

function fact(name, ...values) {
  const title = element("th", "", name);
  title.scope = "row";
  return element("tr", "", title, element("td", "", ...values));
}

function showFacts() {
  const { found } = chain;
  const fixed = (text) => element("span", "fixed", text);
  const officials = [...found.officials].map(([thumbprint, one]) => {
    const role = one.role === undefined ? "" : `, ${one.role}`;
    const end = one.enrolled ? "" : `; suspended by entry ${one.suspendedBy}`;
    return fact("Official", `${one.name}${role}, from entry ${one.since} on${end} `, fixed(thumbprint));
  });
  at("facts").replaceChildren(
    fact("Station", found.station ?? "unknown"),
    fact("Entries", found.entries.toLocaleString("en")),
    fact("Head", fixed(found.head === undefined ? "none" : `${found.head.seq}-${found.head.short}`)),
    fact("Organizer", fixed(found.organizer ?? "no sound key")),
    ...officials,
  );
  const kinds = [...found.kinds].sort(([a], [b]) => (a < b ? -1 : 1));
  at("kinds").replaceChildren(...kinds.map(([kind, often]) => fact(kind, often.toLocaleString("en"))));
}

function outcome(word, note) {
  const cell = element("td", `outcome ${COLOURS[word] ?? "open"}`, `${SHAPES[word] ?? ""} ${word}`);
  if (note !== undefined && note !== "") {
    cell.append(element("span", "note", note));
  }
  return cell;
}

function readings(shots) {
  return shots.flatMap((shot, i) => {
    const marks = [shot.voided ? "void" : shot.counts ? "" : "impossible", shot.typed ? "typed" : ""].filter((one) => one !== "");
    const words = `${shot.speed.replaceAll(" ", "\u00a0")}${marks.length > 0 ? ` (${marks.join(", ")})` : ""}`;
    return [i > 0 ? ", " : "", shot.counts ? words : element("s", "", words)];
  });
}

function verdictRow(row) {
  const differs = row.unknown === undefined && row.outcome !== row.signed;
  const line = element("tr", differs ? "differs" : "");
  const notes = [...(row.notes ?? []), chain.docket.place(row.check)];
  if (row.faulty) {
    notes.push("rests on faulty entries");
  }
  if (row.takenBack !== undefined) {
    notes.push(`taken back or replaced by entry ${row.takenBack}`);
  }
  line.append(
    element("td", "number", String(row.entry)),
    element("td", "number", row.at.slice(0, 19).replace("T", " ")),
    element("td", "", element("b", "", String(row.check.bib)), element("span", "note", String(row.check.name))),
    element("td", "", String(row.check.division)),
    element("td", "", ...readings(row.shots)),
    element("td", "", row.allowed ?? ""),
    element("td", "", row.figure ?? ""),
    outcome(row.signed, row.reason),
    outcome(row.unknown === undefined ? (row.outcome ?? "still open") : "not computed", [row.unknown ?? "", differs ? "differs" : "", ...notes].filter((one) => one !== "").join("; ")),
  );
  return line;
}

function showChecks() {
  at("checks").tBodies[0].replaceChildren();
  at("checks-note").textContent = `${count(chain.rows.length, "verdict")}, in their order. What is computed here comes from the signed readings and the signed rule book alone, exactly.`;
  showMore();
}

/** So many rows more: a browser lays out thousands at once too slowly to stay usable. */
function showMore() {
  const body = at("checks").tBodies[0];
  const from = body.rows.length;
  body.append(...chain.rows.slice(from, from + ROWS_AT_ONCE).map(verdictRow));
  const left = chain.rows.length - body.rows.length;
  at("more").hidden = left === 0;
  at("more").textContent = `Show ${Math.min(left, ROWS_AT_ONCE)} more of ${left.toLocaleString("en")}`;
}

function refuse(words) {
  at("answers").replaceChildren(answer("wrong", "Nothing was verified.", words));
  at("spoken").textContent = words;
  at("found").hidden = false;
  document.body.dataset.state = "refused";
}

async function open(file) {
  document.body.dataset.state = "busy";
  at("found").hidden = true;
  at("compare").disabled = true;
  at("work").hidden = false;
  at("progress").value = 0;
  at("file").disabled = true;
  let wholly = false;
  try {
    if (crypto.subtle === undefined || !(await browserKnowsEd25519())) {
      refuse("This browser cannot try Ed25519 signatures. Open this file from the disk in a browser of 2025 or later, or verify with the script at the end of ledger-format.md.");
      return;
    }
    chain = await verify(file);
    wholly = true;
    showAnswers();
    showFacts();
    at("found").hidden = false;
    showChecks();
    at("compare").disabled = false;
    document.body.dataset.state = "done";
  } catch (wrong) {
    refuse(
      wholly
        ? `The file was read, but this page cannot show what it says (${wrong.message}). Ask for the program’s own report of the ledger.`
        : `The file could not be read to its end (${wrong.message}). Choose it again; if that does not help, ask for another copy.`,
    );
  } finally {
    at("work").hidden = true;
    at("file").disabled = false;
  }
}

at("file").addEventListener("change", () => at("file").files.length > 0 && open(at("file").files[0]));
at("compare").addEventListener("click", showAnswers);
at("more").addEventListener("click", showMore);
const drop = at("drop");
const marked = (on) => (event) => {
  event.preventDefault();
  drop.classList.toggle("over", on);
};
document.addEventListener("dragover", marked(true));
document.addEventListener("dragleave", marked(false));
document.addEventListener("drop", (event) => {
  marked(false)(event);
  if (event.dataTransfer.files.length > 0 && !at("file").disabled) {
    open(event.dataTransfer.files[0]);
  }
});
document.body.dataset.state = "ready";
