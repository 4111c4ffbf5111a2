// An exported line taken apart, and the bytes in it tried with the browser's own cryptography.

/** What somebody typed, between quotation marks that nothing in it ends. */
const quoted = (text) => `“${String(text).replace(/[“”]/g, '"')}”`;

const BASE64URL = "ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789-_";
const UTF8 = new TextDecoder("utf-8", { fatal: true, ignoreBOM: true });
const ENCODER = new TextEncoder();
const toUtf8 = (text) => ENCODER.encode(text);
const START = '{"jws":"'.length;
const DOT = 0x2e;
const QUOTE = 0x22;

/** The bytes of a canonical base64url text without padding; nothing where it is none. */
function bytesOf(text) {
  const rest = text.length % 4;
  const spare = rest === 0 ? 0 : rest === 2 ? 0b1111 : 0b11;
  if (rest === 1 || !/^[A-Za-z0-9_-]*$/.test(text) || (BASE64URL.indexOf(text.at(-1)) & spare) !== 0) {
    return undefined;
  }
  const binary = atob(text.replaceAll("-", "+").replaceAll("_", "/"));
  const bytes = new Uint8Array(binary.length);
  for (let i = 0; i < binary.length; i++) {
    bytes[i] = binary.charCodeAt(i);
  }
  return bytes;
}

const toBase64Url = (bytes) =>
  btoa(String.fromCharCode(...bytes)).replaceAll("+", "-").replaceAll("/", "_").replaceAll("=", "");
const toHex = (bytes) => Array.from(bytes, (b) => b.toString(16).padStart(2, "0")).join("");
const sha256 = async (bytes) => new Uint8Array(await crypto.subtle.digest("SHA-256", bytes));

/** A key for trying signatures, from its 32 bytes. */
const verifyingKey = (bytes) => crypto.subtle.importKey("raw", bytes, { name: "Ed25519" }, false, ["verify"]);
const fits = (key, signature, bytes) => crypto.subtle.verify({ name: "Ed25519" }, key, signature, bytes);

/** Whether this browser knows Ed25519: it must accept the first test of RFC 8032, section 7.1. */
async function browserKnowsEd25519() {
  const bytes = (hex) => Uint8Array.from(hex.match(/../g), (two) => parseInt(two, 16));
  try {
    const key = await verifyingKey(bytes("d75a980182b10ab7d54bfed3c964073a0ee172f3daa62325af021a68f707511a"));
    const signature = bytes(
      "e5564300c360ac729086e2cc806e828a84877f1eb8e5d974d873e06522490155" +
        "5fb8821590a33bacc61e39701cf9b46bd25bf5f0595bbe24655141438e7a100b",
    );
    return await fits(key, signature, new Uint8Array());
  } catch {
    return false;
  }
}

/** The key that a JWK names, with its thumbprint (RFC 7638); nothing where it names none. */
async function namedKey(jwk) {
  const bytes = jwk?.kty === "OKP" && jwk.crv === "Ed25519" && typeof jwk.x === "string" ? bytesOf(jwk.x) : undefined;
  if (bytes?.length !== 32) {
    return undefined;
  }
  try {
    const thumbprint = await sha256(toUtf8(`{"crv":"Ed25519","kty":"OKP","x":"${jwk.x}"}`));
    return { thumbprint: toBase64Url(thumbprint), key: await verifyingKey(bytes) };
  } catch {
    return undefined;
  }
}

/** Throws where an object in this JSON text, which is known to be one, names a member twice. */
function refuseRepeatedNames(json) {
  const parts = /"(?:[^"\\]|\\.)*"|[{}[\],:]/g;
  const open = [];
  let text;
  for (let found = parts.exec(json); found !== null; found = parts.exec(json)) {
    const part = found[0];
    if (part === "{" || part === "[") {
      open.push(part === "{" ? new Set() : null);
    } else if (part === "}" || part === "]") {
      open.pop();
    } else if (part === ":") {
      const name = JSON.parse(text);
      if (open.at(-1).has(name)) {
        throw new Error(`its body names “${name}” twice in one object`);
      }
      open.at(-1).add(name);
    } else if (part !== ",") {
      text = part;
    }
  }
}

const PAYLOAD = new RegExp(
  '^\\{"v":1,"station":"([^"\\\\\\u0000-\\u001f\\u007f]{1,100})","seq":([1-9][0-9]{0,14}),"prev":"([A-Za-z0-9_-]{43})"' +
    ',"at":"(\\d{4}-\\d\\d-\\d\\dT\\d\\d:\\d\\d:\\d\\d\\.\\d{3}Z)","mono":((?:0|[1-9]\\d*)\\.\\d{6})' +
    ',"kind":"([a-z][a-z-]{0,63})","body":(\\{[^]*\\})\\}$',
  "u",
);

/** What a payload says; throws what is wrong with it. */
function readPayload(text) {
  const form = PAYLOAD.exec(text);
  if (form === null || /[\u0000-\u0008\u000b\u000c\u000e-\u001f]/.test(text)) {
    throw new Error("its members are not those of format version 1, in their order");
  }
  const [, station, seq, prev, at, mono, kind, json] = form;
  if (bytesOf(prev) === undefined || Number.isNaN(Date.parse(at)) || new Date(at).toISOString() !== at) {
    throw new Error("its prev is no hash or its time is none");
  }
  const body = JSON.parse(json);
  refuseRepeatedNames(json);
  return { station, seq: Number(seq), prev, at, mono, kind, body };
}

/**
 * One line: the signed bytes, who signed, and what they say. What is wrong with the line alone
 * stands in its faults, as the end of a sentence.
 */
function readLine(bytes, number) {
  const entry = { number, faults: [], seq: undefined };
  let line = "";
  try {
    line = UTF8.decode(bytes);
  } catch {
    entry.faults.push("is not clean UTF-8 text");
    return entry;
  }
  const form = /^\{"jws":"([^"]*)","entry":([^]*)\}$/.exec(line);
  const jws = form === null ? /^\{"jws":"([^"]*)"/.exec(line) : form;
  if (jws === null) {
    entry.faults.push("does not have the form of an exported entry");
    return entry;
  }
  entry.jws = bytes.subarray(START, bytes.indexOf(QUOTE, START));
  const parts = jws[1].split(".");
  const [header, payload, signature] = parts.map(bytesOf);
  if (parts.length !== 3 || header === undefined || payload === undefined || signature?.length !== 64) {
    entry.faults.push("is no signed entry: it does not have three parts in base64url, the last of 64 bytes");
    return entry;
  }
  entry.signed = entry.jws.subarray(0, entry.jws.lastIndexOf(DOT));
  entry.signature = signature;
  const kid = /^\{"alg":"EdDSA","kid":"([^]{43})"\}$/.exec(String.fromCharCode(...header));
  if (kid === null) {
    entry.faults.push("is no signed entry: its header is not alg EdDSA and the kid of a key, in this order");
    return entry;
  }
  entry.signer = kid[1];
  try {
    const text = UTF8.decode(payload);
    entry.seq = Number(/^\{[^{]*?"seq":([1-9][0-9]{0,14}),/.exec(text)?.[1] ?? Number.NaN) || undefined;
    if (form === null || form[2] !== text.replace(/[\r\n]/g, " ")) {
      entry.faults.push("says something else beside the signed bytes than was signed");
    }
    entry.says = readPayload(text);
  } catch (wrong) {
    entry.faults.push(`says nothing that this format knows: ${wrong.message}`);
  }
  return entry;
}

/** Whole lines of a file, in batches; the last one says whether a line end stands behind it. */
async function* linesOf(file) {
  const piece = 1 << 20;
  let rest = new Uint8Array();
  for (let at = 0; at < file.size; at += piece) {
    const more = new Uint8Array(await file.slice(at, at + piece).arrayBuffer());
    const bytes = new Uint8Array(rest.length + more.length);
    bytes.set(rest);
    bytes.set(more, rest.length);
    const lines = [];
    let start = 0;
    for (let end = bytes.indexOf(10); end >= 0; end = bytes.indexOf(10, start)) {
      lines.push(bytes.subarray(start, end));
      start = end + 1;
    }
    rest = bytes.subarray(start);
    yield { lines, whole: true };
  }
  if (rest.length > 0) {
    yield { lines: [rest], whole: false };
  }
}
