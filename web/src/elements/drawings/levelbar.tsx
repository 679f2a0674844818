// The sump's level beside its number, as high as in the drawing of the guided page: a slip of a digit is
// seen as a nearly empty sump.
import type { Section } from "../../core/messages";

const WIDTH = 16;
const HEIGHT = 56;

export function LevelBar({ section }: { readonly section: Section | null }) {
  const y = (share: number): number => HEIGHT * (1 - share);
  return (
    <svg
      class="level-bar"
      viewBox={`0 0 ${WIDTH} ${HEIGHT}`}
      preserveAspectRatio="none"
      aria-hidden="true"
    >
      {section === null ? null : (
        <>
          <rect
            y={y(section.level)}
            width={WIDTH}
            height={HEIGHT * section.level}
            class="level-bar-fill"
          />
          <path d={`M0 ${y(section.full_mark)}H${WIDTH}`} class="level-bar-edge" />
          <path d={`M0 ${y(section.full_mark)}H${WIDTH}`} class="level-bar-mark" />
        </>
      )}
    </svg>
  );
}
