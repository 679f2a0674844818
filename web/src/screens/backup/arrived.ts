// A text that came in through the camera, on its way to the page that shows what is in a file.
let arrived: string | null = null;

export function arrive(text: string): void {
  arrived = text;
}

/** Handed out once: whoever comes back to that page begins anew. */
export function takeArrived(): string | null {
  const text = arrived;
  arrived = null;
  return text;
}
