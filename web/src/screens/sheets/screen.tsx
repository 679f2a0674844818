// Printing that belongs to no machine: an empty log sheet, and what is known of the printer.
import { useEffect } from "preact/hooks";
import { back, replace } from "../route";
import { LineScreen } from "./line";
import { isPaper } from "./settings";
import { SheetScreen } from "./sheet";

function Leave() {
  useEffect(() => {
    replace("log");
  }, []);
  return null;
}

export function PrintScreen({ parts }: { readonly parts: readonly string[] }) {
  const [place, name] = parts;
  if (place === "line" && isPaper(name)) return <LineScreen key={name} paper={name} />;
  if (place !== "log_sheet") return <Leave />;
  return (
    <SheetScreen
      kind="log_sheet"
      body={{ kind: "log_sheet" }}
      place={undefined}
      onBack={() => {
        back("log");
      }}
    />
  );
}
