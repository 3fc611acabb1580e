package tiewright.saturday;

import java.util.List;
import java.util.Optional;
import tiewright.event.Role;

/** What one person does at one moment, by clicks alone: from the own first page along ways that pages offer to a form, which is sent. */
final class Errand {
    private static final String SLOW =
            "/captain/(proposal|day|form|film|rota|record).*|/organiser/(day-breaks|dry-run|budget).*";
    private static final String NOWHERE = "/enter.*|/language.*|/my|.*[.](csv|ics)|.*/qr.*";
    /** Where officials go when the day does not go as planned. */
    private static final String TROUBLE =
            "/organiser/(rulings|cases|tables|links|times|plan|notices|clubs|courts)|/protests|/hurt|/log";

    /** Rain, a court that cannot be used, a club that is late, a venue that closes: its kinds, and the ways found last. */
    private static final String BREAKS = "/organiser/day-breaks";

    private static final double IT_RAINS = 0.02;

    /** Advice takes longer to work out than all else that a captain does. */
    private static final double ASKS_FOR_ADVICE = 0.003;

    private static final String DEEPER_TROUBLE =
            "/organiser/(withdraw|correct|plan|links|cases)(/.*)?|/desk/notice/.*|/stop/.*";

    private final Person who;
    private final Dice dice;
    private final Presses presses;

    Errand(Person who, Dice dice, String clock, Log log) {
        this.who = who;
        this.dice = dice;
        this.presses = new Presses(who, dice, clock, log);
    }

    /** Sends no form to these addresses. */
    Errand leaving(String addresses) {
        presses.leave(addresses);
        return this;
    }

    /** One thing that this person may have come for. */
    void run() {
        Sight first = presses.open(who.firstPage());
        if (dice.chance(0.5)) {
            who.takeUnsent().ifPresent(presses::pressAgain);
        }
        if (dice.chance(0.1) && !who.tabs().isEmpty()) {
            presses.press(dice.any(who.tabs()));
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

    /** Straight to a page whose form is to be sent. */
    void sendAt(String page) {
        presses.press(presses.open(page));
    }

    private void captain(Sight first) {
        if (dice.chance(ASKS_FOR_ADVICE)) {
            proposed(first);
        } else if (dice.chance(0.75)) {
            go(first.ways(".presses a.button-main[href],.presses a[href^=/captain/sheet]"))
                    .ifPresent(presses::press);
        } else if (dice.chance(0.4)) {
            cards(first);
        } else if (dice.chance(0.2)) {
            go(first.ways().stream()
                            .filter(way -> way.matches("/captain/links|/protests|/hurt"))
                            .toList())
                    .ifPresent(presses::press);
        } else {
            wander(first);
        }
    }

    private void official(Sight first) {
        if (dice.chance(IT_RAINS)) {
            breaks(first);
        } else if (dice.chance(0.5)) {
            floor(first);
        } else if (dice.chance(0.4)) {
            go(first.ways("#do-next a[href]")).ifPresent(presses::press);
        } else if (dice.chance(0.3)) {
            cards(first);
        } else if (dice.chance(0.6)) {
            trouble(first);
        } else {
            wander(first);
        }
    }

    /** The sheet that a proposal gives, or the last one, as it stands in the form to which they lead. */
    private void proposed(Sight first) {
        go(first.ways(".presses a[href^=/captain/proposal]"))
                .flatMap(proposal -> deeper(proposal, "/captain/sheet/[^/]+[?].*"))
                .ifPresent(presses::press);
    }

    /** What the desk offers for each court: a call with one press, the score of what is on it, the pairs of a decider. */
    private void floor(Sight desk) {
        List<String> ways = desk.ways(".floor .go a[href]");
        if (ways.isEmpty() || dice.chance(0.5)) {
            presses.pressIn(desk, ".floor .go");
        } else {
            go(ways).ifPresent(presses::press);
        }
    }

    private void organiser(Sight first) {
        if (dice.chance(3 * IT_RAINS)) {
            breaks(first);
        } else if (dice.chance(0.3)) {
            go(List.of("/desk")).ifPresent(this::official);
        } else if (dice.chance(0.7)) {
            trouble(first);
        } else {
            wander(first);
        }
    }

    private void trouble(Sight first) {
        Optional<Sight> there = deeper(first, TROUBLE);
        if (there.isEmpty()) {
            wander(first);
            return;
        }
        Optional<Sight> further = dice.chance(0.5) ? deeper(there.get(), DEEPER_TROUBLE) : Optional.empty();
        presses.press(further.orElse(there.get()));
    }

    /** The day does not go on as it was planned: what can be done is looked for, or a way that was found is published. */
    private void breaks(Sight first) {
        Optional<Sight> here = deeper(first, BREAKS);
        Optional<Sight> way = here.filter(ways -> dice.chance(0.8)).flatMap(ways -> deeper(ways, BREAKS + "[?]way=.*"));
        if (way.isPresent()) {
            presses.press(way.get());
            return;
        }
        Optional<Sight> kinds =
                here.flatMap(ways -> deeper(ways, BREAKS + "[?]what=")).or(() -> here);
        kinds.flatMap(sight -> deeper(sight, BREAKS + "[?]what=.+")).ifPresent(presses::press);
    }

    /** To a card: the list of ties, a tie, one of its rubbers; now and then on to what hangs on it. */
    private void cards(Sight from) {
        Optional<Sight> ties = who.role() == Role.VOLUNTEER ? Optional.of(from) : deeper(from, "/cards.*");
        Optional<Sight> tie = ties.flatMap(sight -> deeper(sight, "/cards/[^/]+"));
        if (dice.chance(0.1)) {
            tie.flatMap(sight -> deeper(sight, "/organiser/correct/.*")).ifPresent(presses::press);
        } else {
            tie.flatMap(sight -> deeper(sight, "/cards/[^/]+/[^/]+")).ifPresent(presses::press);
        }
    }

    private Optional<Sight> deeper(Sight sight, String pattern) {
        return go(sight.ways().stream().filter(way -> way.matches(pattern)).toList());
    }

    private void wander(Sight from) {
        Sight here = from;
        for (int i = dice.between(1, 3); i > 0; i--) {
            List<String> ways = here.ways().stream()
                    .filter(way -> !way.matches(NOWHERE) && (!way.matches(SLOW) || dice.chance(ASKS_FOR_ADVICE)))
                    .toList();
            Optional<Sight> next = go(ways);
            if (next.isEmpty()) {
                return;
            }
            here = next.get();
        }
        if (dice.chance(0.5)) {
            presses.press(here);
        }
    }

    private Optional<Sight> go(List<String> ways) {
        return dice.anyOf(ways).map(presses::open);
    }
}
