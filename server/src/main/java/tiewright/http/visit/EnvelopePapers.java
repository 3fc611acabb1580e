package tiewright.http.visit;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import tiewright.event.Club;
import tiewright.event.ClubId;
import tiewright.event.Side;
import tiewright.event.Stage;
import tiewright.event.Tie;
import tiewright.event.VisibleEvent;
import tiewright.http.pieces.SheetView;
import tiewright.http.views.LinksMadeView;
import tiewright.http.views.PackView;
import tiewright.http.views.PackView.Leaf;

/**
 * What a club's captain is handed in an envelope, so that the day goes on without a phone: its order of play, a blank sheet and a
 * decider slip for each tie ahead, the conditions. Beside new links it holds what everybody may read, minors shortened.
 */
public final class EnvelopePapers {
    private final Visit visit;
    private final VisibleEvent event;
    private final BlankSheets blank;

    public EnvelopePapers(Visit visit) {
        this.visit = visit.asStranger();
        this.event = this.visit.event();
        this.blank = new BlankSheets(event);
    }

    /** @param slips the links that were made just now, of each club */
    public PackView all(Map<ClubId, List<LinksMadeView.Slip>> slips) {
        List<Leaf> leaves = event.clubs().stream()
                .filter(this::isStillIn)
                .flatMap(club -> of(club, slips.getOrDefault(club.id(), List.of())).stream())
                .toList();
        return new PackView(
                say(leaves.isEmpty() ? "page-visit.envelopes-need-clubs" : "page-visit.envelopes-in-order"), leaves);
    }

    public PackView one(Club club) {
        return new PackView(say("page-visit.envelope-of-one"), of(club, List.of()));
    }

    private boolean isStillIn(Club club) {
        return !event.withdrawals().containsKey(club.id());
    }

    private List<Leaf> of(Club club, List<LinksMadeView.Slip> slips) {
        List<Tie> ahead = event.tiesOf(club.id()).stream()
                .filter(tie -> event.goesOn(tie) && !event.progress(tie).finished())
                .toList();
        List<Leaf> leaves = new ArrayList<>();
        leaves.add(front(club, slips, ahead));
        add(leaves, Leaf.of(title("sheets", club)).withSheets(sheets(club, ahead)));
        add(leaves, Leaf.of(title("deciders", club)).withSheets(deciders(club, ahead)));
        add(
                leaves,
                Leaf.of(title("conditions", club)).withRules(ConditionGroups.of(visit.words(), event.conditions())));
        return leaves;
    }

    private static void add(List<Leaf> leaves, Leaf leaf) {
        if (leaf.holdsAnything()) {
            leaves.add(leaf);
        }
    }

    private Leaf front(Club club, List<LinksMadeView.Slip> slips, List<Tie> ahead) {
        String id = "ties-" + club.id();
        return Leaf.of(
                        title("front", club),
                        say(slips.isEmpty() ? "page-visit.envelope-without-slip" : "page-visit.envelope-with-slip"),
                        say("page-visit.envelope-how"))
                .withSlips(slips)
                .withGrids(
                        ahead.isEmpty()
                                ? List.of()
                                : List.of(TieGrids.of(event, id, say("page-visit.envelope-order"), ahead)));
    }

    /** One for each tie whose sheets are not open, and one for each round of the knockout that the club may still come to. */
    private List<SheetView> sheets(Club club, List<Tie> ahead) {
        List<SheetView> sheets = new ArrayList<>();
        ahead.stream().filter(tie -> !tie.isOpened()).forEach(tie -> sheets.add(blank.of(tie, side(tie, club))));
        long unknown = event.ties().stream()
                .filter(tie -> tie.stage() != Stage.POOL && !tie.isReady())
                .map(Tie::round)
                .distinct()
                .count();
        for (long i = 0; i < unknown; i++) {
            sheets.add(blank.ofAny(club.name()));
        }
        return sheets;
    }

    private List<SheetView> deciders(Club club, List<Tie> ahead) {
        if (!event.conditions().expectsDeciders()) {
            return List.of();
        }
        return ahead.stream()
                .filter(tie -> !tie.isDeciderOpened())
                .map(tie -> blank.ofDecider(tie, side(tie, club)))
                .toList();
    }

    private static Side side(Tie tie, Club club) {
        return tie.sideOf(club.id()).orElseThrow();
    }

    private String title(String which, Club club) {
        return say("page-visit.envelope-title." + which, "club", club.name());
    }

    private String say(String code, Object... facts) {
        return visit.say(code, facts);
    }
}
