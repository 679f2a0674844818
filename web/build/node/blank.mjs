// Fills free memory with zeros before it is written down: what was freed still holds its old bytes,
// and they would be sent to every phone.

const PAGE_BYTES = 4096;
/** What a bytes object needs besides its bytes, and the byte at its end. */
const BYTES_OVERHEAD = 17;
/** Python's allocator has eight sizes between a power of two and the next above 64 bytes. */
const STEPS = 8;
const LARGEST_BLOCK = 1 << 14;
const BATCH_BYTES = 1 << 16;
const LARGEST_CHUNK = 1 << 18;
const SMALLEST_CHUNK = 32;

/** Blanks the free blocks of Python's own allocator, then the free chunks of the C heap below it. */
export function blankFreeMemory(python) {
  blankBlocks(python);
  blankHeap(python._module);
}

// Asked and answered in text: an object that passes from one side to the other would leave a trace
// in the memory that Pyodide does not write down.
const BEGIN = `
_kept = []
def _take(size, count):
    taken = [bytes(size) for _ in range(count)]
    _kept.append(taken)
    return " ".join(str(id(block)) for block in taken)
`;
const END = `
del _kept, _take
import gc
gc.collect()
del gc
`;

/** Takes blocks of every size until they come from memory that nothing has used yet. */
function blankBlocks(python) {
  const isUsed = usedPages(python._module.HEAPU8);
  python.runPython(BEGIN);
  for (const size of blockSizes()) {
    const count = Math.max(4, Math.floor(BATCH_BYTES / size));
    for (let used = count; used > count / 2; ) {
      const places = python.runPython(`_take(${size - BYTES_OVERHEAD}, ${count})`).split(" ");
      used = places.filter((at) => isUsed[Math.floor(Number(at) / PAGE_BYTES)]).length;
    }
  }
  python.runPython(END);
}

function usedPages(heap) {
  const used = [];
  for (let start = 0; start < heap.length; start += PAGE_BYTES)
    used.push(heap.subarray(start, start + PAGE_BYTES).some((byte) => byte !== 0));
  return used;
}

function blockSizes() {
  const sizes = [];
  for (let size = 24; size <= 64; size += 8) sizes.push(size);
  for (let power = 64; power < LARGEST_BLOCK; power *= 2)
    for (let i = 1; i <= STEPS; i++) sizes.push(power + (i * power) / STEPS);
  return sizes;
}

/** Takes every free chunk below the present end of the heap, from large to small, and frees them. */
function blankHeap(module) {
  const end = module._sbrk(0);
  const taken = [];
  for (let size = LARGEST_CHUNK; size >= SMALLEST_CHUNK; size /= 2) {
    for (;;) {
      const at = module._malloc(size);
      if (at === 0) break;
      if (at + size > end) {
        module._free(at);
        break;
      }
      module.HEAPU8.fill(0, at, at + size);
      taken.push(at);
    }
  }
  for (const at of taken) module._free(at);
}
