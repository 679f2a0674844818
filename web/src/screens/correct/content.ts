// The content of an entry with what was corrected in it. A place in it is a path with points.
import type { AnyContent } from "../../store/log/entry";
import { bodyOf } from "../../store/log/line";
import type { Field } from "./fields";

export type Content = Readonly<Record<string, unknown>>;
/** What was typed or chosen anew, by the name of the field; what is not named stays. */
export type Texts = Readonly<Record<string, string>>;

interface Typed {
  readonly text: string;
  readonly unit?: string;
}

const SEPARATOR = "|";

export function contentOf(entry: AnyContent): Content {
  return bodyOf(entry) as Content;
}

export function valueAt(content: Content, path: string): unknown {
  let value: unknown = content;
  for (const name of path.split(".")) value = (value as Content | null | undefined)?.[name];
  return value;
}

/** A copy with one place changed; undefined takes it out. */
function changedAt(content: Content, path: readonly string[], value: unknown): Content {
  const [name = "", ...rest] = path;
  const inner = content[name] as Content | undefined;
  const next = rest.length === 0 ? value : changedAt(inner ?? {}, rest, value);
  if (Array.isArray(content))
    return content.map((item: unknown, i) => (String(i) === name ? next : item)) as never;
  const others = Object.entries(content).filter(([other]) => other !== name || next !== undefined);
  return { ...Object.fromEntries(others), ...(next === undefined ? {} : { [name]: next }) };
}

/** What stands in a field, as text: digits, words, a code, or several codes. Empty: nothing. */
export function textOf(content: Content, { name, kind }: Field): string {
  const value = valueAt(content, name);
  if (value === undefined) return "";
  if (kind === "looks") return (value as readonly string[]).join(SEPARATOR);
  if (kind === "gauge") {
    const { depth, gauge_to: to } = value as { depth: Typed; gauge_to?: Typed };
    return [depth.text, to?.text ?? ""].join(SEPARATOR);
  }
  if (typeof value === "string" || typeof value === "number") return String(value);
  return (value as Typed).text;
}

export const partsOf = (text: string): readonly string[] => text.split(SEPARATOR).filter(Boolean);
export const joined = (parts: readonly string[]): string => parts.join(SEPARATOR);

/** The value that a text stands for. */
function valueOf({ kind, unit }: Field, text: string): unknown {
  if (text.trim() === "") return undefined;
  if (kind === "count") return Number(text);
  if (kind === "number") return { text, unit };
  return kind === "looks" ? partsOf(text) : text.trim();
}

function withText(content: Content, field: Field, text: string): Content {
  if (field.kind !== "gauge")
    return changedAt(content, field.name.split("."), valueOf(field, text));
  const [from = "", to = ""] = text.split(SEPARATOR);
  const { unit } = field;
  const dip = {
    depth: { text: from, unit },
    ...(to === "" ? {} : { gauge_to: { text: to, unit } }),
  };
  return changedAt(content, field.name.split("."), dip);
}

const isPoured = (row: unknown): boolean => (row as { count?: number }).count !== undefined;

/** A dip slide without a count was not read, and a row without buckets was not poured. */
function tidied(content: Content): Content {
  const slide = content["dip_slide"] as object | undefined;
  const rows = content["pours"];
  const isBare = slide !== undefined && Object.keys(slide).length === 0;
  const bare = isBare ? changedAt(content, ["dip_slide"], undefined) : content;
  return Array.isArray(rows) ? { ...bare, pours: rows.filter(isPoured) } : bare;
}

export function contentWith(content: Content, fields: readonly Field[], texts: Texts): Content {
  const changed = fields.reduce((now, field) => {
    const text = texts[field.name];
    return text === undefined ? now : withText(now, field, text);
  }, content);
  return tidied(changed);
}
