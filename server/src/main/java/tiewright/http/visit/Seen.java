package tiewright.http.visit;

import java.util.Locale;
import java.util.OptionalLong;

/**
 * What a form was made from, as it travels to the browser and back under seal. Always of one length, so that no page grows by how
 * often somebody sealed or noted something.
 *
 * @param seq the last fact that the viewer may notice
 * @param noted the last change of the own club's notes; 0 for whoever reads none
 */
record Seen(OptionalLong seq, OptionalLong noted) {
    private static final int DIGITS = 19;

    static Seen of(long seq, long noted) {
        return new Seen(OptionalLong.of(seq), OptionalLong.of(noted));
    }

    String text() {
        return String.format(Locale.ROOT, "%019d%019d", seq.orElseThrow(), noted.orElseThrow());
    }

    /** One of a page that an earlier version made says nothing about notes: it has seen none. */
    static Seen parse(String text) {
        return of(
                Long.parseLong(text.substring(0, DIGITS)),
                text.length() > DIGITS ? Long.parseLong(text.substring(DIGITS)) : 0);
    }
}
