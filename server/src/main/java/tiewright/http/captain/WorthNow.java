package tiewright.http.captain;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import tiewright.event.Pair;
import tiewright.event.RubberNo;
import tiewright.event.RubberScore;
import tiewright.event.Side;
import tiewright.event.Tie;
import tiewright.http.views.ProposalView;
import tiewright.http.visit.Visit;
import tiewright.lineup.club.LineupInputs;
import tiewright.lineup.tie.TieNow;
import tiewright.wording.LineupWords;

/** What an opened tie is worth now, for the captain of one of its clubs: results count, the rest by its chances. */
final class WorthNow {
    private final Visit visit;
    private final Tie tie;
    private final Side side;
    private final LineupInputs inputs;

    WorthNow(Visit visit, Tie tie, LineupInputs inputs) {
        this.visit = visit;
        this.tie = tie;
        this.side = tie.sideOf(visit.club()).orElseThrow();
        this.inputs = inputs;
    }

    /** Empty once the tie is over. */
    Optional<ProposalView.Sheet> sheet(TieNow.Odds decider) {
        if (!visit.event().goesOn(tie)) {
            return Optional.empty();
        }
        TieNow now = TieNow.of(inputs.problem(), soFar(), decider, 1);
        List<ProposalView.Line> lines = new ArrayList<>();
        int left = 0;
        for (RubberNo rubber : tie.opened().keySet()) {
            boolean counted = !rubber.isDecider()
                    && meeting(rubber).isPresent()
                    && result(rubber).isEmpty();
            lines.add(counted ? chance(rubber, now.left().get(left++)) : over(rubber));
        }
        return Optional.of(new ProposalView.Sheet(
                "", lines, ProposedSheets.ofTie(visit, doubted(now.tie())), List.of(), List.of()));
    }

    private TieNow.SoFar soFar() {
        SortedMap<RubberNo, Boolean> over = new TreeMap<>();
        SortedMap<RubberNo, TieNow.Meeting> left = new TreeMap<>();
        for (RubberNo rubber : tie.opened().keySet()) {
            Optional<Side> winner = result(rubber).map(RubberScore::winner).orElseGet(() -> alone(rubber));
            if (rubber.isDecider()) {
                continue;
            }
            winner.ifPresent(taken -> over.put(rubber, taken == side));
            if (result(rubber).isEmpty()) {
                meeting(rubber).ifPresent(both -> left.put(rubber, both));
            }
        }
        return new TieNow.SoFar(over, left, meeting(RubberNo.DECIDER));
    }

    private Optional<RubberScore> result(RubberNo rubber) {
        return tie.card(rubber).score(rubber);
    }

    private Optional<TieNow.Meeting> meeting(RubberNo rubber) {
        return pair(rubber, side)
                .flatMap(ours -> pair(rubber, side.other()).map(theirs -> new TieNow.Meeting(ours, theirs)));
    }

    private Optional<Pair> pair(RubberNo rubber, Side whose) {
        return Optional.ofNullable(tie.opened().get(rubber)).flatMap(opened -> opened.pair(whose));
    }

    /** Who has a pair where the other side has none. */
    private Optional<Side> alone(RubberNo rubber) {
        boolean ours = pair(rubber, side).isPresent();
        boolean theirs = pair(rubber, side.other()).isPresent();
        return ours == theirs ? Optional.empty() : Optional.of(ours ? side : side.other());
    }

    private ProposalView.Line chance(RubberNo rubber, TieNow.Odds odds) {
        return new ProposalView.Line(
                rubber.toString(),
                names(rubber),
                "",
                LineupWords.whole(odds.chance()),
                ProposedSheets.range(visit, doubted(odds)),
                Optional.of(ProposedSheets.bar(visit, rubber.toString(), doubted(odds))));
    }

    private ProposalView.Line over(RubberNo rubber) {
        String how = result(rubber)
                .flatMap(RubberScore::winner)
                .map(winner -> winner == side ? "page-captain.now-won" : "page-captain.now-lost")
                .orElse("page-captain.now-open");
        return new ProposalView.Line(rubber.toString(), names(rubber), "", visit.say(how), "", Optional.empty());
    }

    private String names(RubberNo rubber) {
        return ProposedSheets.ofKind(visit, rubber, pair(rubber, side));
    }

    private static ProposedSheets.Doubted doubted(TieNow.Odds odds) {
        return new ProposedSheets.Doubted(odds.chance(), odds.low(), odds.high());
    }
}
