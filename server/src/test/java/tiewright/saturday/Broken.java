package tiewright.saturday;

/**
 * A promise that did not hold.
 *
 * @param promise its number among the promises of the design
 * @param what a sentence that names the thing
 */
record Broken(int promise, String what) {
    @Override
    public String toString() {
        return "promise " + promise + ": " + what;
    }
}
