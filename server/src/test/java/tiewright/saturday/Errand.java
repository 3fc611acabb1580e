package tiewright.saturday;

import java.util.List;
import java.util.Optional;
import org.jsoup.nodes.Element;
import org.jsoup.select.Elements;
import tiewright.event.Role;

/**
 * What one person does at one moment, by clicks alone: from the own first page along ways that pages offer to a form, which
 * is filled in and sent, and gone on with while the answer asks for another press.
 */
final class Errand {
    private static final int PRESSES = 3;
    /** What ends a day for everybody, or takes longer than a day of this machine has. */
    private static final String NOT_TODAY = "/leave|/organiser/private-data.*|/organiser/backup|/organiser/club/.*"
            + "|/organiser/links.*|/captain/links.*|/organiser/plan.*|/organiser/day-breaks.*|/organiser/dry-run|/organiser/budget"
            + "|/organiser/event|/organiser/draw|/organiser/knockout|/captain/film.*|/captain/past.*";

    private static final String SLOW =
            "/captain/(proposal|day|form|film|rota|record).*|/organiser/(plan|day-breaks|dry-run|budget).*";

    private final Person who;
    private final Dice dice;
    private final String clock;
    private final Log log;

    Errand(Person who, Dice dice, String clock, Log log) {
        this.who = who;
        this.dice = dice;
        this.clock = clock;
        this.log = log;
    }

    /** One thing that this person may have come for. */
    void run() {
        Sight first = see(who.open(who.firstPage()));
        if (dice.chance(0.1) && !who.tabs().isEmpty()) {
            press(dice.any(who.tabs()));
            return;
        }
        switch (who.role()) {
            case CAPTAIN -> captain(first);
            case DESK, REFEREE -> official(first);
            case ORGANISER -> organiser(first);
            case VOLUNTEER -> cards(first);
            case PLAYER, PUBLIC -> wander(first);
        }
    }

    private void captain(Sight first) {
        if (dice.chance(0.75)) {
            go(first.ways(".buttons a[href],.countdown a[href]")).ifPresent(this::press);
        } else if (dice.chance(0.5)) {
            cards(first);
        } else {
            wander(first);
        }
    }

    private void official(Sight first) {
        if (dice.chance(0.5)) {
            go(first.ways("#do-next a[href]")).ifPresent(this::press);
        } else if (dice.chance(0.7)) {
            cards(first);
        } else {
            wander(first);
        }
    }

    private void organiser(Sight first) {
        if (dice.chance(0.4)) {
            go(List.of("/desk")).ifPresent(this::official);
        } else {
            wander(first);
        }
    }

    /** To a card: the list of ties, a tie, one of its rubbers. */
    private void cards(Sight from) {
        Optional<Sight> ties = who.role() == Role.VOLUNTEER
                ? Optional.of(from)
                : go(from.ways().stream()
                        .filter(way -> way.startsWith("/cards"))
                        .toList());
        ties.flatMap(sight -> deeper(sight, "/cards/[^/]+"))
                .ifPresent(tie -> deeper(tie, "/cards/[^/]+/[^/]+").ifPresent(this::press));
    }

    private Optional<Sight> deeper(Sight sight, String pattern) {
        return go(sight.ways().stream().filter(way -> way.matches(pattern)).toList());
    }

    private void wander(Sight from) {
        Sight here = from;
        for (int i = dice.between(1, 3); i > 0; i--) {
            List<String> ways = here.ways().stream()
                    .filter(way -> !way.matches("/enter.*|/language.*") && (!way.matches(SLOW) || dice.chance(0.05)))
                    .toList();
            Optional<Sight> next = go(ways);
            if (next.isEmpty()) {
                return;
            }
            here = next.get();
        }
        if (dice.chance(0.5)) {
            press(here);
        }
    }

    private Optional<Sight> go(List<String> ways) {
        return dice.anyOf(ways).map(way -> see(who.open(way)));
    }

    private Sight see(Sight sight) {
        log.saw(sight);
        return sight;
    }

    /** Fills in a form of the page and sends it, and goes on while the answer has a main button of the same address. */
    private void press(Sight sight) {
        Optional<Element> form = dice.anyOf(mainFirst(sight));
        if (form.isEmpty()) {
            return;
        }
        String action = action(sight, form.get());
        Sight answer = send(action, form.get());
        for (int i = 1; i < PRESSES && answer.status() == 200; i++) {
            Optional<Element> next = onwards(answer, action);
            if (next.isEmpty()) {
                return;
            }
            answer = send(action, next.get());
        }
    }

    private static Optional<Element> onwards(Sight answer, String action) {
        return answer.forms().stream()
                .filter(form -> form.attr("action").equals(action)
                        && !form.select(".button-main").isEmpty())
                .reduce((first, second) -> second);
    }

    private List<Element> mainFirst(Sight sight) {
        List<Element> forms = sight.forms().stream()
                .filter(form -> !action(sight, form).matches(NOT_TODAY))
                .toList();
        List<Element> main = forms.stream()
                .filter(form -> !form.select(".button-main").isEmpty())
                .toList();
        return main.isEmpty() || dice.chance(0.3) ? forms : main;
    }

    private static String action(Sight sight, Element form) {
        return form.hasAttr("action") ? form.attr("action") : sight.path();
    }

    private Sight send(String action, Element form) {
        Elements buttons = form.select("button:not([hidden]):not([disabled]):not([type=button])");
        Elements main = form.select("button.button-main:not([hidden]):not([disabled])");
        Optional<Element> button = dice.anyOf(main.isEmpty() || dice.chance(0.2) ? buttons : main);
        List<java.util.Map.Entry<String, String>> fields = new Hand(dice, clock).filled(form, button);
        long before = log.seq();
        Sight answer = see(who.send(action, fields));
        log.sent(new Log.Sent(who, action, fields, answer, before, log.seq()));
        if (dice.chance(0.08)) {
            long done = log.seq();
            Sight again = see(who.send(action, fields));
            log.sentAgain(new Log.Sent(who, action, fields, again, done, log.seq()));
        }
        return answer;
    }
}
