// Where a bucket goes in: at the return, where the stream stirs, and never beside the pump's suction. A
// tank with a screen is poured into before it.
import { say } from "../../words/say";
import { LevelSign } from "./marks";
import { Walls, type Walled } from "./section";

const SIZE = { width: 336, height: 128 };
const FRAME: Walled = { left: 15, right: 321, top: 36, floor: 113 };
const SURFACE = 66;
/** Under the return, and on the pump's side. */
const [HERE, THERE] = [78, 226];

/** A pipe whose stream falls in and stirs. */
function Return() {
  return (
    <path
      class="scribed"
      d={`M0 8H40v18M0 18H30v8M30 26h10M33 32v${SURFACE - 34}M38 32v${SURFACE - 34}M24 ${SURFACE + 8}q6 5 12 0M30 ${SURFACE + 16}q8 5 16 0`}
    />
  );
}

/** Tipped, so that it is seen what is done here. */
function Bucket() {
  return (
    <>
      <path d={`M${HERE} 34V${SURFACE}`} class="pour-stream" />
      <g transform={`translate(${HERE + 22} 20) rotate(-112)`}>
        <path d="M-16 -14L-11 16H11L16 -14" class="scribed" />
        <path d="M-19 -14H19" class="scribed" />
      </g>
      <path d={`M${HERE} ${SURFACE + 20}v-14m-6 7l6 -7l6 7`} class="pour-arrow" />
      <text x={HERE} y={SURFACE + 37} class="pour-word" text-anchor="middle">
        {say("pour.here_word")}
      </text>
    </>
  );
}

/** Motor, shaft and strainer. */
function Pump() {
  return (
    <>
      <path
        class="scribed"
        d="M268 6h32v20h-32zM284 26v66M274 92h20v18h-20zM274 98h20M274 104h20"
      />
      <path d={`M${THERE - 10} 36l20 20m0 -20l-20 20`} class="pour-cross" />
      <text x={THERE} y={SURFACE + 37} class="drawn-word" text-anchor="middle">
        {say("pour.here_not")}
      </text>
    </>
  );
}

export function PourHere({ divided }: { readonly divided: boolean }) {
  return (
    <svg
      class="drawing section pour-place"
      viewBox={`0 0 ${SIZE.width} ${SIZE.height}`}
      role="img"
      aria-label={say(divided ? "pour.here_divided" : "pour.here_drawing")}
    >
      <rect
        x={FRAME.left}
        y={SURFACE}
        width={FRAME.right - FRAME.left}
        height={FRAME.floor - SURFACE}
        class="coolant-fill"
      />
      <path d={`M${FRAME.left} ${SURFACE}H${FRAME.right}`} class="surface" />
      {divided ? <path d={`M156 ${FRAME.top + 6}V${FRAME.floor}`} class="pour-screen" /> : null}
      <LevelSign x={130} y={SURFACE} />
      <Return />
      <Bucket />
      <Pump />
      <Walls frame={FRAME} />
    </svg>
  );
}
