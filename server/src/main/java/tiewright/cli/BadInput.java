package tiewright.cli;

import java.util.List;

/** What was given cannot be used; the lines say what is wrong and what to do. */
final class BadInput extends RuntimeException {
    private static final long serialVersionUID = 1L;
    private final transient List<String> lines;

    BadInput(List<String> lines) {
        super(String.join("\n", lines));
        this.lines = List.copyOf(lines);
    }

    BadInput(String line) {
        this(List.of(line));
    }

    List<String> lines() {
        return lines;
    }
}
