// From a page outside the set-up to one of its questions.

/**
 * Behind the address of a page: whoever comes so is led on to what its answer leaves open and then to the
 * page that saves. Back where it came from the answer would not count yet.
 */
export const ENTER = "enter";
