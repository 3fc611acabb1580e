package tiewright.http.everybody;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import tiewright.event.ClubId;
import tiewright.event.KnockoutFinal;
import tiewright.event.Side;
import tiewright.event.SlotSource;
import tiewright.event.Stage;
import tiewright.event.Tie;
import tiewright.event.TieProgress;
import tiewright.event.VisibleEvent;
import tiewright.http.answers.Answers;
import tiewright.http.pieces.Bracket;
import tiewright.http.visit.KnockoutRounds;
import tiewright.http.visit.ThroughLine;
import tiewright.http.visit.TieOrder;
import tiewright.http.visit.TieViews;
import tiewright.http.visit.Visit;
import tiewright.wording.Words;

/** The knockout round by round, with who would stand in a place if it ended now. */
final class KnockoutViews {
    private final Visit visit;
    private final VisibleEvent event;
    private final Words words;
    private final TieViews views;
    private final List<Tie> ties;

    KnockoutViews(Visit visit) {
        this.visit = visit;
        this.event = visit.event();
        this.words = visit.words();
        this.views = new TieViews(event);
        this.ties =
                event.ties().stream().filter(tie -> tie.stage() != Stage.POOL).toList();
    }

    boolean isDrawn() {
        return !ties.isEmpty();
    }

    /** The winner of the final, as soon as it is finished. */
    Optional<String> champion() {
        return KnockoutFinal.of(ties)
                .flatMap(tie -> event.progress(tie).winner().flatMap(tie::club))
                .map(event::clubName);
    }

    /** The rounds of those who can still win, and last the ties of losers and those for the other places. */
    Bracket bracket() {
        TreeMap<Integer, List<Bracket.Slot>> rounds = new TreeMap<>();
        List<Bracket.Slot> losers = new ArrayList<>();
        List<Bracket.Slot> placing = new ArrayList<>();
        for (Tie tie : TieOrder.sorted(ties)) {
            boolean others = tie.stage() == Stage.PLACING;
            (others
                            ? placing
                            : tie.isOfLosers()
                                    ? losers
                                    : rounds.computeIfAbsent(tie.round(), round -> new ArrayList<>()))
                    .add(slot(tie));
        }
        List<Bracket.Round> shown = new ArrayList<>();
        rounds.forEach((round, slots) -> shown.add(new Bracket.Round(title(round), slots)));
        if (!losers.isEmpty()) {
            shown.add(new Bracket.Round(words.say("page-everybody.third-place"), losers));
        }
        if (!placing.isEmpty()) {
            shown.add(new Bracket.Round(words.say("page-everybody.other-places"), placing));
        }
        return new Bracket(words.say("page-everybody.knockout"), shown);
    }

    private String title(int round) {
        return words.say(
                "page-everybody.round",
                "of",
                KnockoutRounds.code(event, round),
                "count",
                2 * KnockoutRounds.full(event, round));
    }

    private Bracket.Slot slot(Tie tie) {
        String where = views.where(tie);
        return new Bracket.Slot(
                words.say(
                        where.isEmpty() ? "page-everybody.slot-label" : "page-everybody.slot-label-court",
                        "stage",
                        views.stage(tie),
                        "when",
                        views.when(tie),
                        "where",
                        where),
                "/tie/" + tie.id(),
                entry(tie, Side.HOME),
                entry(tie, Side.AWAY),
                views.state(tie));
    }

    private Bracket.Entry entry(Tie tie, Side side) {
        TieProgress progress = event.progress(tie);
        Optional<SlotSource> from = tie.slot(side).from();
        boolean known = tie.club(side).isPresent();
        return new Bracket.Entry(
                known ? views.side(tie, side) : "",
                from.map(views::source).orElse(""),
                progress.rubbers().isEmpty() ? "" : Integer.toString(progress.won(side)),
                progress.winner().filter(side::equals).isPresent(),
                known ? "" : from.flatMap(this::now).map(this::nowWords).orElse(""));
    }

    private Optional<ClubId> now(SlotSource source) {
        return source.kind() == SlotSource.Kind.POOL_PLACE && event.pools().containsKey(source.of())
                ? ThroughLine.wouldBe(source, visit.ask(Answers::new).table(source.of()))
                : Optional.empty();
    }

    private String nowWords(ClubId club) {
        return words.say("page-everybody.now-club", "club", event.clubName(club));
    }
}
