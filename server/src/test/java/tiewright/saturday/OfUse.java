package tiewright.saturday;

import java.util.Optional;
import java.util.function.Predicate;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import tiewright.event.Card;
import tiewright.event.ClubId;
import tiewright.event.Event;
import tiewright.event.Player;
import tiewright.event.PlayerId;
import tiewright.event.RubberNo;
import tiewright.event.Tie;
import tiewright.event.TieId;

/**
 * Whether anybody can want an address at this moment: a card once its rubber has pairs, a correction once something is entered, the
 * pair of a decider that can come, times once there are ties, a full screen for who is still to play. Addresses that name nothing are always of use.
 */
record OfUse(Event event) implements Predicate<String> {
    private static final Pattern RUBBER = Pattern.compile("/(cards|stop|organiser/correct)/([^/]+)/([^/]+)(/correct)?");
    private static final Pattern TIE =
            Pattern.compile("/(cards|desk/tie|paper/tie|captain/sheet|captain/proposal)/([^/]+)");
    private static final String AFTER_DRAW = "/organiser/(times|knockout|budget)";

    @Override
    public boolean test(String address) {
        if (address.matches(AFTER_DRAW) && event.ties().isEmpty()
                || address.equals("/organiser/withdraw") && event.clubs().isEmpty()) {
            return false;
        }
        if (address.matches("/player/[^/]+/court")) {
            return event.player(PlayerId.of(address.split("/", -1)[2]))
                    .filter(this::isToPlay)
                    .isPresent();
        }
        Matcher rubber = RUBBER.matcher(address);
        if (rubber.matches()) {
            return rubber(
                    rubber.group(1) + Optional.ofNullable(rubber.group(4)).orElse(""),
                    tie(rubber.group(2)),
                    RubberNo.parse(rubber.group(3)).orElseThrow());
        }
        Matcher tie = TIE.matcher(address);
        if (tie.matches()) {
            return tie(tie.group(2)).filter(one -> tie(tie.group(1), one)).isPresent();
        }
        if (address.startsWith("/captain/decider/")) {
            return tie(address.replaceFirst(".*/", ""))
                    .filter(this::canComeToDecider)
                    .isPresent();
        }
        if (address.startsWith("/desk/notice/")) {
            return !event.order()
                    .concerned(Integer.parseInt(address.replaceFirst(".*/", "")))
                    .isEmpty();
        }
        return !address.startsWith("/organiser/withdraw/")
                || !event.withdrawals().containsKey(ClubId.of(address.replaceFirst(".*/", "")));
    }

    private boolean tie(String what, Tie tie) {
        return switch (what) {
            case "cards" -> tie.isOpened() && !event.progress(tie).finished();
            case "desk/tie", "paper/tie" -> tie.isReady();
            default -> tie.isReady() && !tie.isOpened() && !event.isGone(tie);
        };
    }

    private Optional<Tie> tie(String code) {
        return event.tie(TieId.of(code));
    }

    private boolean isToPlay(Player player) {
        return event.ties().values().stream()
                .filter(tie -> tie.has(player.club()) && tie.isReady() && !event.isGone(tie))
                .anyMatch(tie -> !tie.isOpened());
    }

    private boolean canComeToDecider(Tie tie) {
        return tie.isOpened()
                && !tie.isDeciderOpened()
                && !event.progress(tie).finished()
                && event.progress(tie).canComeToDecider();
    }

    private boolean rubber(String what, Optional<Tie> tie, RubberNo rubber) {
        if (tie.isEmpty() || !tie.get().opened().containsKey(rubber)) {
            return false;
        }
        boolean entered = tie.get().card(rubber).standing() != Card.Standing.EMPTY;
        return what.endsWith("correct") == entered;
    }
}
