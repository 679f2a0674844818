// On the first screen: how many entries are on this phone alone, and how old the oldest of them is.
import { PlaceLink } from "../../elements/buttons";
import { backlog } from "../../store/log/journal";
import { say, sayCount } from "../../words/say";
import { writeAgo, writeMoment } from "../../words/times";
import { address } from "../route";

/** What can be said of the entries that are not in a backup, and of the last one. */
export function standingSentence(): string {
  if (backlog.value === null) return say("machines.reading");
  const { count, oldest, lastAt } = backlog.value;
  if (count > 0) return sayCount("backup.open", count, { ago: writeAgo(oldest, new Date()) });
  return lastAt === ""
    ? say("backup.none_needed")
    : say("backup.all", { time: writeMoment(lastAt) });
}

export function BackupStanding() {
  return <p>{standingSentence()}</p>;
}

export function BackupLink() {
  return <PlaceLink to={address("backup")}>{say("backup.title")}</PlaceLink>;
}
