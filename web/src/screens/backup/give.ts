// A file leaves the page: by the share sheet where it takes files, else as a download.

/** `stopped`: the person closed the share sheet, and nothing left the phone. */
export type Given = "shared" | "downloaded" | "stopped";

const KEPT_MS = 60_000;

function download(file: File): void {
  const address = URL.createObjectURL(file);
  const link = document.createElement("a");
  link.href = address;
  link.download = file.name;
  link.click();
  // The browser reads the file after the press; freed at once, some would save an empty one.
  setTimeout(() => {
    URL.revokeObjectURL(address);
  }, KEPT_MS);
}

/** Older browsers have neither, whatever the types say. */
type Sharing = Partial<Pick<Navigator, "canShare" | "share">>;

export function canShare(file: File): boolean {
  const sharing: Sharing = navigator;
  return sharing.share !== undefined && sharing.canShare?.({ files: [file] }) === true;
}

export async function giveFile(file: File): Promise<Given> {
  if (canShare(file)) {
    try {
      await navigator.share({ files: [file] });
      return "shared";
    } catch (error) {
      if (error instanceof DOMException && error.name === "AbortError") return "stopped";
      // Any other refusal: the file can still be saved.
    }
  }
  download(file);
  return "downloaded";
}

/** pailwright-2026-11-25-0640.txt: sorted by name, files are sorted by time. */
export function fileName(what: string, now: string, ending: string): string {
  return `${what}-${now.slice(0, 10)}-${now.slice(11, 16).replace(":", "")}.${ending}`;
}
