package tiewright.http.visit;

/** A number with what it counts. */
public final class Counted {
    private Counted() {}

    /** "1 club", "2 clubs". */
    public static String of(int number, String one) {
        return of(number, one, one + "s");
    }

    /** For words that take more than an s. */
    public static String of(int number, String one, String many) {
        return number + " " + (number == 1 ? one : many);
    }
}
