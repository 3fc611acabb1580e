package tiewright.saturday;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import tiewright.event.ClubId;
import tiewright.event.Event;
import tiewright.event.PlayerId;
import tiewright.event.RubberNo;
import tiewright.event.Tie;
import tiewright.event.TieProgress;

/** No player is told to be free who may be needed: for a rubber still to come, a held card, a decider not yet settled. */
final class NothingToldTooLate implements Promise {
    private static final Pattern FREE_UNTIL = Pattern.compile("(?i)free until[^.]*?(\\d\\d:\\d\\d)");

    @Override
    public List<Broken> broken(Moment moment) {
        List<Broken> broken = new ArrayList<>();
        for (Sight sight : moment.fresh()) {
            if (sight.isRead() && sight.path().matches("/player/[^/]+")) {
                PlayerId player = PlayerId.of(sight.path().substring("/player/".length()));
                moment.event()
                        .player(player)
                        .ifPresent(one -> look(moment, sight, player, one.club())
                                .ifPresent(what -> broken.add(new Broken(10, sight + ": " + what))));
            }
        }
        return broken;
    }

    private static Optional<String> look(Moment moment, Sight sight, PlayerId player, ClubId club) {
        String text = sight.text();
        boolean saysFree = text.toLowerCase(java.util.Locale.ROOT).contains("free until");
        if (!saysFree) {
            return Optional.empty();
        }
        moment.met(Looked.FREE_UNTIL);
        Matcher until = FREE_UNTIL.matcher(text);
        if (until.find() && until.group(1).compareTo(moment.clock()) < 0) {
            return Optional.of("\"" + until.group() + "\" is read at " + moment.clock());
        }
        return moment.event().ties().values().stream()
                .filter(tie -> tie.has(club) && tie.isOpened())
                .filter(tie -> mayBeNeeded(moment.event(), tie, player))
                .findFirst()
                .map(tie -> "\"free until\" is read while tie " + tie.id() + " may need " + player);
    }

    private static boolean mayBeNeeded(Event event, Tie tie, PlayerId player) {
        if (event.withdrawals().keySet().stream().anyMatch(tie::has)) {
            return false;
        }
        TieProgress progress = event.progress(tie);
        boolean own = progress.left().stream().anyMatch(rubber -> names(tie, rubber, player));
        boolean held = progress.held().stream().anyMatch(rubber -> names(tie, rubber, player));
        boolean decider = progress.awaitsDecider() && (!tie.isDeciderOpened() || names(tie, RubberNo.DECIDER, player));
        return own || held || decider;
    }

    private static boolean names(Tie tie, RubberNo rubber, PlayerId player) {
        return Optional.ofNullable(tie.opened().get(rubber)).stream()
                .flatMap(pairs -> java.util.stream.Stream.of(pairs.home(), pairs.away()))
                .flatMap(Optional::stream)
                .anyMatch(pair -> pair.has(player));
    }
}
