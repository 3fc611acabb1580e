package tiewright.desk;

import tiewright.event.Event;

/** The next number of a ruling and of a notice. */
final class Numbers {
    private Numbers() {}

    static int ruling(Event event) {
        return event.rulings().stream()
                        .mapToInt(ruling -> ruling.number())
                        .max()
                        .orElse(0)
                + 1;
    }

    static int notice(Event event) {
        return event.notices().stream()
                        .mapToInt(posted -> posted.notice().number())
                        .max()
                        .orElse(0)
                + 1;
    }
}
