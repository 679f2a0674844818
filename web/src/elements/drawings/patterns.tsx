/** Hatches are defined once for the page: every drawing uses the same 45° cut. */
export function Patterns() {
  return (
    <svg class="patterns" width="0" height="0" aria-hidden="true" focusable="false">
      <defs>
        <pattern
          id="cut"
          width="7"
          height="7"
          patternUnits="userSpaceOnUse"
          patternTransform="rotate(45)"
        >
          <path d="M0 0V7" class="hatch-scribed" />
        </pattern>
        <pattern
          id="band"
          width="8"
          height="8"
          patternUnits="userSpaceOnUse"
          patternTransform="rotate(45)"
        >
          <path d="M0 0V8" class="hatch-band" />
        </pattern>
        <pattern id="water" width="12" height="8" patternUnits="userSpaceOnUse">
          <path d="M1 4h6" class="hatch-water" />
        </pattern>
        <pattern
          id="sludge"
          width="6"
          height="6"
          patternUnits="userSpaceOnUse"
          patternTransform="rotate(-30)"
        >
          <path d="M0 1h3M3 4h3" class="hatch-sludge" />
        </pattern>
      </defs>
    </svg>
  );
}
